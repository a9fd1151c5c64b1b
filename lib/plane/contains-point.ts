import type { Point, Polygon } from "./types.ts";

/** Whether a point lies inside a polygon; on the outline may answer either way. */
export function containsPoint(corners: Polygon, [x, y]: Point): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i++) {
    const [xi, yi] = corners[i]!;
    const [xj, yj] = corners[j]!;
    // Does the ray to the right cross this side?
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}
