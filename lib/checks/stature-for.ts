import type { Mm } from "../plane/types.ts";
import table from "../../shared/tables/stature-for-age.json" with { type: "json" };
import { ageRow } from "./age-row.ts";

/** Stature of the small, the middle and the tall child of an age. */
export interface Statures {
  readonly small: Mm;
  readonly middle: Mm;
  readonly tall: Mm;
}

/**
 * Stature of the middle child of an age, the smaller of boys and girls. Years are rounded down; null
 * from 19 on, and the youngest row below two.
 *
 * @source CDC 2000 stature-for-age, 50th percentile, in `shared/tables/stature-for-age.json`
 */
export function statureFor(years: number): Mm | null {
  return staturesFor(years)?.middle ?? null;
}

/**
 * The whole spread of an age: the 5th percentile of the smaller sex, the smaller of the two medians,
 * the 95th of the taller.
 *
 * @source CDC 2000 stature-for-age, as above
 */
export function staturesFor(years: number): Statures | null {
  const row = ageRow(table.rows, years);
  if (row === null) return null;
  const at = (index: 0 | 1 | 2) => [(row.boys[index] ?? 0) * 10, (row.girls[index] ?? 0) * 10];
  return {
    small: Math.min(...at(0)),
    middle: Math.min(...at(1)),
    tall: Math.max(...at(2)),
  };
}
