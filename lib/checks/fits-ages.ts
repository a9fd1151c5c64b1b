import type { Mm } from "../plane/types.ts";
import sizes from "../../shared/tables/seat-sizes.json" with { type: "json" };

/** For whom a seat is, by the size marks of schools. */
export interface AgesOf {
  readonly marks: readonly number[];
  readonly from: number;
  readonly to: number;
  /** The mark a grown child needs next and its seat height; null above the last. */
  readonly next: { readonly mark: number; readonly seat: Mm } | null;
}

const marks = sizes.rows.flatMap(({ mark, seat, guideAges }) =>
  guideAges === null ? [] : [{ mark, seat, ages: [guideAges[0] ?? 0, guideAges[1] ?? 0] as const }],
);

/**
 * Ages a seat suits: those of the size marks nearest to its height, from the lowest to the highest
 * it has under a sitter. Null when it is far below the smallest mark or above the largest.
 *
 * @source dealer guide to BS EN 1729, in `shared/tables/seat-sizes.json`; nearest mark is our choice
 */
export function agesFor(lowest: Mm, highest: Mm): AgesOf | null {
  const [small, large] = [nearest(lowest), nearest(highest)];
  if (small === null || large === null) return null;
  const [one, other] = [marks[small], marks[large]];
  if (one === undefined || other === undefined) return null;
  const next = marks[large + 1];
  return {
    marks: marks.slice(small, large + 1).map(({ mark }) => mark),
    from: one.ages[0],
    to: other.ages[1],
    next: next === undefined ? null : { mark: next.mark, seat: next.seat },
  };
}

/** A seat further from every mark than this has none, in mm: half the widest step. */
const far: Mm = 25;

function nearest(height: Mm): number | null {
  const off = marks.map(({ seat }) => Math.abs(seat - height));
  const least = Math.min(...off);
  return least > far ? null : off.indexOf(least);
}
