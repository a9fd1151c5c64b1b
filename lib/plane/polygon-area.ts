import type { Mm2, Polygon } from "./types.ts";

/** Signed area: positive counter-clockwise (y up). Fewer than three corners give 0. */
export function polygonArea(corners: Polygon): Mm2 {
  let doubled = 0;
  for (let i = 0; i < corners.length; i++) {
    const [x1, y1] = corners[i]!;
    const [x2, y2] = corners[(i + 1) % corners.length]!;
    doubled += x1 * y2 - x2 * y1;
  }
  return doubled / 2;
}
