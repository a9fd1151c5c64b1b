import type { Mm, Point, Polygon } from "../plane/types.ts";
import { dropStraight } from "./split-convex.ts";

/**
 * Fill the shallow dents of a simple counter-clockwise polygon: inward corners no deeper than `depth`
 * are bridged, the shallowest first. What comes back contains the polygon, has the same bounds and
 * falls into fewer convex parts.
 *
 * @source Visvalingam and Whyatt 1993, "Line generalisation by repeated elimination of points", The
 * Cartographic Journal 30 (least important corner first), here inward corners only
 */
export function fillDents(polygon: Polygon, depth: Mm): Polygon {
  let corners = dropStraight(polygon);
  for (;;) {
    const dent = shallowest(corners, depth);
    if (dent === null) return corners;
    corners = dropStraight(corners.filter((_, i) => i !== dent));
  }
}

/** The shallowest inward corner that can be bridged over nothing; null when none is shallow enough. */
function shallowest(corners: Polygon, depth: Mm): number | null {
  let found: number | null = null;
  let least = depth;
  corners.forEach((corner, i) => {
    const before = corners[(i + corners.length - 1) % corners.length]!;
    const after = corners[(i + 1) % corners.length]!;
    const turn = turnOf(before, corner, after);
    if (turn >= 0) return;
    const deep = -turn / Math.hypot(after[0] - before[0], after[1] - before[1]);
    if (deep > least) return;
    const ends = [before, corner, after];
    // Does another corner lie in the dent? Then the bridge would cross the outline.
    if (corners.some((p) => !ends.includes(p) && isWithin(p, before, after, corner))) return;
    [found, least] = [i, deep];
  });
  return found;
}

/** Twice the area of a triangle: positive when it turns left. */
const turnOf = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const isWithin = (p: Point, a: Point, b: Point, c: Point): boolean =>
  turnOf(a, b, p) >= 0 && turnOf(b, c, p) >= 0 && turnOf(c, a, p) >= 0;
