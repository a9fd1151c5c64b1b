import type { Mm, Point, Polygon } from "./types.ts";
import { cross, distance, dot, subtract } from "./points.ts";

/**
 * A polygon with fewer corners, none of the old ones further than `within` from its outline. Fewer
 * than four corners come back as they are.
 *
 * @source Douglas and Peucker 1973, "Algorithms for the reduction of the number of points required
 *   to represent a digitized line or its caricature"
 */
export function thinCorners(corners: Polygon, within: Mm): Polygon {
  if (corners.length < 4) return corners;
  const start = corners[0]!;
  const far = corners.reduce(
    (best, corner, i) => (distance(corner, start) > distance(corners[best]!, start) ? i : best),
    0,
  );
  const [out, back] = [corners.slice(0, far + 1), [...corners.slice(far), start]];
  return [...thinPath(out, within).slice(0, -1), ...thinPath(back, within).slice(0, -1)];
}

function thinPath(path: Polygon, within: Mm): readonly Point[] {
  const [from, to] = [path[0]!, path.at(-1)!];
  if (path.length < 3) return path;
  const off = path.map((point) => distanceToStretch(point, from, to));
  const worst = off.indexOf(Math.max(...off));
  if (off[worst]! <= within) return [from, to];
  return [
    ...thinPath(path.slice(0, worst + 1), within).slice(0, -1),
    ...thinPath(path.slice(worst), within),
  ];
}

function distanceToStretch(point: Point, from: Point, to: Point): Mm {
  const [along, reach] = [subtract(to, from), subtract(point, from)];
  const square = dot(along, along);
  const share = square === 0 ? 0 : dot(reach, along) / square;
  if (share <= 0) return distance(point, from);
  if (share >= 1) return distance(point, to);
  return Math.abs(cross(along, reach)) / Math.sqrt(square);
}
