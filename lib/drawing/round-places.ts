import type { Mm, Point } from "../plane/types.ts";
import type { Anchor, Candidate } from "./types.ts";

/** How far from the thing its words may stand, nearest first. */
const reaches: readonly Mm[] = [6, 8, 10, 13, 16, 20, 25, 31, 38, 46];

/** Places all round a point, each with a leader to it: right and left first, then above and below. */
export function roundPlaces(to: Point, isLed = true): Candidate[] {
  return reaches.flatMap((reach) =>
    angles.map((angle): Candidate => {
      const [x, y] = [Math.cos(angle), -Math.sin(angle)];
      const at: Point = [to[0] + reach * x, to[1] + reach * y];
      return { at, anchor: anchorAt(x), leader: isLed ? to : null };
    }),
  );
}

/** Every fifteen degrees, level ones first. */
const angles: readonly number[] = [0, 12, 1, 23, 11, 13, 2, 22, 10, 14, 3, 21, 9, 15]
  .concat([4, 20, 8, 16, 5, 19, 7, 17, 6, 18])
  .map((step) => (step * Math.PI) / 12);

function anchorAt(x: number): Anchor {
  if (x > 0.3) return "start";
  return x < -0.3 ? "end" : "middle";
}

/** Places over a point, then under it, each with a leader to it: for things in a row. */
export function abovePlaces(to: Point): Candidate[] {
  const shifts: readonly Mm[] = [0, 6, -6, 12, -12, 18, -18];
  return [-1, 1].flatMap((side) =>
    reaches.slice(1).flatMap((reach) =>
      shifts.map((shift): Candidate => ({
        at: [to[0] + shift, to[1] + side * reach],
        anchor: "middle",
        leader: to,
      })),
    ),
  );
}
