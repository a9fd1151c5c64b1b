import type { Mm } from "../plane/types.ts";
import table from "../../shared/tables/stature-for-age.json" with { type: "json" };

/**
 * Stature of the middle child of an age, the smaller of boys and girls. Years are rounded down; null
 * from 19 on, and the youngest row below two.
 *
 * @source CDC 2000 stature-for-age, 50th percentile, in `shared/tables/stature-for-age.json`
 */
export function statureFor(years: number): Mm | null {
  const youngest = table.rows[0];
  const last = table.rows.at(-1);
  if (youngest === undefined || last === undefined || years >= last.age + 1) return null;
  const row = table.rows.findLast(({ age }) => age <= years) ?? youngest;
  return Math.min(row.boys, row.girls) * 10;
}
