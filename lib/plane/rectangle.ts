import { line } from "./segments.ts";
import type { Loop, Mm, Polygon } from "./types.ts";

/** The corners of a rectangle by its lower left one, counter-clockwise from there. */
export const rectangleAt = (x: Mm, y: Mm, width: Mm, length: Mm): Polygon => [
  [x, y],
  [x + width, y],
  [x + width, y + length],
  [x, y + length],
];

/** A rectangle as an outline, its lower left corner at the origin. */
export function rectangleLoop(width: Mm, length: Mm): Loop {
  const corners = rectangleAt(0, 0, width, length);
  return corners.map((corner, i) => line(corner, corners[(i + 1) % 4]!));
}
