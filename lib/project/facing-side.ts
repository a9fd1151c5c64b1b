import { directionAlong } from "../plane/segments.ts";
import type { Segment } from "../plane/types.ts";

/** The sides of a flat piece as it lies right side up. */
export const pieceSides = ["top", "bottom", "left", "right"] as const;
export type PieceSide = (typeof pieceSides)[number];

/**
 * Which side of its piece an edge lies on: where it faces, within an eighth of a turn. Null for a curve.
 * Needs a counter-clockwise outline; an edge just half-way belongs to the top or bottom.
 */
export function facingSide(segment: Segment): PieceSide | null {
  if (segment.kind !== "line") return null;
  const [x, y] = directionAlong(segment, 0);
  // Outward lies to the right of travel.
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? "bottom" : "top";
  return y > 0 ? "right" : "left";
}
