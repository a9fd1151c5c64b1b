import type { Mm, Ratio } from "../plane/types.ts";
import type { Audience } from "../project/types.ts";
import sizes from "../../shared/tables/seat-sizes.json" with { type: "json" };
import { rules } from "./rules.ts";
import { statureFor } from "./stature-for.ts";

/** Seat heights that suit a sitter, and how they were found. */
export interface SeatFor {
  readonly lowest: Mm;
  readonly highest: Mm;
  readonly basis: (length: (mm: Mm) => string) => string;
  readonly source: string;
}

/**
 * Back of the knee above the floor, as a share of stature.
 *
 * @source ANSUR II 2012 raw data: women 0.238, men 0.245, barefoot; the mean of the two
 */
export const poplitealShare: Ratio = 0.24;

/**
 * One step down in the marks is 30 to 50 mm; a seat that much lower suits the mark below.
 *
 * @source BS EN 1729 seat heights, as in `shared/tables/seat-sizes.json`
 */
const oneMark: Mm = rules["seat-low"].oneMark;

/** Multi-purpose seat for adults. */
const adult = {
  lowest: rules["seat-low"].adult,
  highest: rules["seat-high"].adult,
  source:
    "Pheasant, Bodyspace (multi-purpose seat 400 to 460 mm), http://tbeech.blogspot.com/2010/10/anthropemetric-considerations.html",
} as const;

/**
 * Seat heights for a sitter by stature, age or as an adult. Marks overlap: whoever lies in two may
 * sit as low as the one or as high as the other.
 *
 * @source BS EN 1729 size marks; CDC 2000 stature for age; both in `shared/tables`
 */
export function seatFor(audience: Audience): SeatFor {
  switch (audience.kind) {
    case "adult":
      return { ...adult, basis: () => "an adult" };
    case "stature":
      return seatByStature(
        audience.stature,
        (length) => `a sitter ${length(audience.stature)} tall`,
      );
    case "age": {
      const stature = statureFor(audience.years);
      if (stature === null) return { ...adult, basis: () => "an adult" };
      return seatByStature(
        stature,
        (length) => `a child of ${audience.years}, about ${length(stature)} tall`,
      );
    }
  }
}

function seatByStature(stature: Mm, basis: SeatFor["basis"]): SeatFor {
  // Marks 0 and 7 are from memory: they back nothing up alone.
  const rows = sizes.rows.filter(
    ({ known, stature: [from = 0, to = 0] }) =>
      known === "seen" && stature >= from && stature <= to,
  );
  const [lower] = rows;
  const upper = rows.at(-1);
  // Is the sitter smaller than the smallest mark, or taller than the largest?
  if (lower === undefined || upper === undefined) {
    const seat = Math.round(poplitealShare * stature);
    return {
      lowest: seat - oneMark,
      highest: seat,
      basis,
      source: "ANSUR II 2012: back of the knee at 0.24 of stature",
    };
  }
  return {
    lowest: lower.seat - oneMark,
    highest: upper.seat,
    basis: (length) => `${basis(length)} (${marksOf(lower.mark, upper.mark)} of EN 1729-1)`,
    source: sizes.source,
  };
}

function marksOf(lower: number, upper: number): string {
  return lower === upper ? `mark ${lower}` : `marks ${lower} and ${upper}`;
}
