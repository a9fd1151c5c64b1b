import { polygonHull } from "d3-polygon";
import type { Mm, Point } from "../plane/types.ts";
import type { Solid, SolidBlock } from "../solids/types.ts";

/** Corners this near the floor stand on it, in mm. */
const onTheFloor: Mm = 1;
/** A base narrower than this share of the thing is the line that a roll lies on. Our choice. */
const roll = 0.2;

/**
 * What a thing stands on: the hull of everything that touches the floor, counter-clockwise seen from
 * above. Empty without blocks.
 */
export function supportBase(solid: Solid): readonly Point[] {
  const points = solid.blocks.flatMap((block) => footOf(block, solid.min[2]));
  const hull = polygonHull(points.map(([x, y]): [number, number] => [x, y]));
  if (hull === null) return [];
  const isCounterClockwise = signedArea(hull) > 0;
  return isCounterClockwise ? hull : hull.toReversed();
}

/** Whether a thing lies on a line only, so that it rolls. */
export function isRoll(solid: Solid, base: readonly Point[]): boolean {
  const spread = (axis: 0 | 1) =>
    Math.max(...base.map((point) => point[axis])) - Math.min(...base.map((point) => point[axis]));
  return (
    base.length > 0 &&
    (spread(0) < roll * solid.size[0] || spread(1) < roll * solid.size[1]) &&
    solid.faces.some(({ isCurved }) => isCurved)
  );
}

function footOf({ mesh, min, size }: SolidBlock, floor: Mm): Point[] {
  if (min[2] - floor >= onTheFloor) return [];
  const low = mesh.points.filter(([, , z]) => z - floor < onTheFloor);
  if (low.length > 0) return low.map(([x, y]): Point => [x, y]);
  const [x, y] = min;
  return [
    [x, y],
    [x + size[0], y],
    [x + size[0], y + size[1]],
    [x, y + size[1]],
  ];
}

function signedArea(points: readonly Point[]): number {
  return points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
}
