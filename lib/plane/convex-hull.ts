import { polygonHull } from "d3-polygon";
import type { Mm, Point, Polygon } from "./types.ts";
import { distance } from "./points.ts";
import { polygonArea } from "./polygon-area.ts";

/** The convex hull, counter-clockwise (y up). Fewer than three points come back as they are. */
export function convexHull(points: readonly Point[]): Polygon {
  const hull = polygonHull(points.map(([x, y]) => [x, y])) as [number, number][] | null;
  if (hull === null) return points;
  return polygonArea(hull) < 0 ? hull.reverse() : hull;
}

/** Length once round a polygon. */
export const perimeter = (corners: Polygon): Mm =>
  corners.reduce((sum, corner, i) => sum + distance(corner, corners[(i + 1) % corners.length]!), 0);
