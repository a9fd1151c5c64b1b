import { containsPoint } from "./contains-point.ts";
import { flattenLoop } from "./flatten-loop.ts";
import { cross, distance, subtract } from "./points.ts";
import type { Loop, Mm, Point, Polygon, Ratio } from "./types.ts";

/** A straight line between two corners of an outline. */
export interface Diagonal {
  readonly from: Point;
  readonly to: Point;
  readonly length: Mm;
}

/** Where along a diagonal it is looked whether it is still inside: close to its ends and between. */
const shares: readonly Ratio[] = [0.02, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.98];

/**
 * What to measure to see that an outline was drawn true: the longest line between two corners that
 * runs inside, and the longest inside that crosses it. Sides are none of them, nor is anything of an
 * outline of fewer than four corners, which its sides already fix.
 */
export function checkDiagonals(loop: Loop): readonly Diagonal[] {
  const corners = loop.map((segment) => segment.from);
  if (corners.length < 4 || loop.every(({ kind }) => kind === "arc")) return [];
  const ring = flattenLoop(loop);
  const inside = corners
    .flatMap((from, i) => corners.slice(i + 2).map((to) => ({ from, to })))
    .filter(({ from, to }) => !(from === corners[0] && to === corners.at(-1)))
    .filter(({ from, to }) => isInside(from, to, ring))
    .map(({ from, to }): Diagonal => ({ from, to, length: distance(from, to) }))
    .toSorted((a, b) => b.length - a.length || 0);
  const first = inside[0];
  const second = inside.find((pair) => first !== undefined && doCross(first, pair));
  return [first, second].filter((each) => each !== undefined);
}

const isInside = ([x0, y0]: Point, [x1, y1]: Point, ring: Polygon): boolean =>
  shares.every((share) => containsPoint(ring, [x0 + (x1 - x0) * share, y0 + (y1 - y0) * share]));

function doCross(a: Diagonal, b: Diagonal): boolean {
  const side = (line: Diagonal, point: Point): number =>
    cross(subtract(line.to, line.from), subtract(point, line.from));
  return side(a, b.from) * side(a, b.to) < -1e-9 && side(b, a.from) * side(b, a.to) < -1e-9;
}
