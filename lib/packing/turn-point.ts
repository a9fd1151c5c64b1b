import type { Degrees, Point } from "../plane/types.ts";

/** A point turned about the origin. Quarter turns are exact; any other turn uses sine and cosine. */
export function turnPoint([x, y]: Point, turn: Degrees): Point {
  switch (((turn % 360) + 360) % 360) {
    case 0:
      return [x, y];
    case 90:
      return [-y, x];
    case 180:
      return [-x, -y];
    case 270:
      return [y, -x];
  }
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [x * cos - y * sin, x * sin + y * cos];
}
