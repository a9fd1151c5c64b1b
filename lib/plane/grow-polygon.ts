import { EndType, JoinType, inflatePathsD } from "clipper2-ts";
import { polygonArea } from "./polygon-area.ts";
import type { Mm, Polygon } from "./types.ts";

/** How far a rounded corner may stray inward from the true round. */
const strays: Mm = 0.02;

/**
 * A polygon with all that lies within a distance of it, corners rounded, so that its bounds grow by
 * just that distance. Counter-clockwise. By 0 or less it comes back as it is. What grows together
 * round a notch loses the notch.
 */
export function growPolygon(polygon: Polygon, by: Mm): Polygon {
  if (by <= 0) return polygon;
  const path = polygon.map(([x, y]) => ({ x, y }));
  const grown = inflatePathsD([path], by, JoinType.Round, EndType.Polygon, 2, 6, strays);
  const rings = grown.map((ring) => ring.map(({ x, y }) => [x, y] as const));
  const [largest = polygon] = rings.toSorted((a, b) => polygonArea(b) - polygonArea(a));
  return largest;
}
