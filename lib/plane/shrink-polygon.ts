import { EndType, JoinType, inflatePathsD } from "clipper2-ts";
import { polygonArea } from "./polygon-area.ts";
import type { Mm, Polygon } from "./types.ts";

/**
 * What of a polygon lies farther than a distance from its edge: several polygons where a neck is
 * narrower than twice that, none where nothing is left. Counter-clockwise, whichever way it came.
 */
export function shrinkPolygon(polygon: Polygon, by: Mm): readonly Polygon[] {
  const left = polygonArea(polygon) < 0 ? [...polygon].reverse() : polygon;
  if (by <= 0) return [left];
  const path = left.map(([x, y]) => ({ x, y }));
  const shrunk = inflatePathsD([path], -by, JoinType.Miter, EndType.Polygon, 2, 6);
  return shrunk
    .map((ring) => ring.map(({ x, y }) => [x, y] as const))
    .filter((ring) => polygonArea(ring) > 0);
}
