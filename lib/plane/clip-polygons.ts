import { ClipType, FillRule, booleanOpD } from "clipper2-ts";
import { union } from "polyclip-ts";
import type { Mm, Mm2, Point, Polygon } from "./types.ts";
import { containsPoint } from "./contains-point.ts";
import { polygonArea } from "./polygon-area.ts";

/** Decimal places kept by the clipping library: 1e-6 mm. */
const places = 6;

/**
 * Areas as lists of loops: outer loops counter-clockwise, holes clockwise (y up). Overlapping or
 * touching loops of one list are joined first.
 */
export type Region = readonly Polygon[];

/**
 * Regions joined into one. By polyclip-ts: the quicker library never returns from some outlines that
 * touch themselves along a line.
 */
export function unite(a: Region, b: Region = []): Region {
  const parts = [...withHoles(a), ...withHoles(b)];
  if (parts.length === 0) return [];
  const joined = union(parts[0]! as never, ...(parts.slice(1) as never[])) as unknown as Polygons[];
  return joined.flat().map((ring) => ring.slice(0, -1));
}

/** As `unite`, many times quicker: for simple loops none of which touches itself. */
export const uniteSimple = (loops: Region): Region => combine(ClipType.Union, loops, []);

type Polygons = Point[][];

/** Each outer loop with the holes cut into it: those it is the smallest loop round. */
function withHoles(region: Region): Polygons[] {
  const loops = region
    .filter((loop) => loop.length > 2)
    .map((loop) => loop.map(([x, y]): Point => [snap(x), snap(y)]));
  const area = (loop: Polygon) => Math.abs(polygonArea(loop));
  const isOuter = (loop: Polygon) => polygonArea(loop) >= 0;
  const roundHole = (hole: Polygon) =>
    loops
      .filter((loop) => isOuter(loop) && area(loop) > area(hole) && containsPoint(loop, hole[0]!))
      .toSorted((p, q) => area(p) - area(q))[0];
  const holes = loops.filter((loop) => !isOuter(loop));
  const within = new Map(holes.map((hole) => [hole, roundHole(hole)]));
  // A clockwise loop that lies in no other is an area drawn the other way round.
  const outers = loops.filter((loop) => isOuter(loop) || within.get(loop) === undefined);
  return outers.map((outer) => [
    [...outer],
    ...holes.filter((hole) => within.get(hole) === outer).map((hole) => [...hole]),
  ]);
}

/** Corners that should be one must be one to the last digit. */
const snap = (part: Mm): Mm => Number(part.toFixed(places));

export const intersect = (a: Region, b: Region): Region => combine(ClipType.Intersection, a, b);
export const subtractRegion = (a: Region, b: Region): Region => combine(ClipType.Difference, a, b);

/** Area of a region, holes taken off. */
export const regionArea = (region: Region): Mm2 =>
  region.reduce((area, loop) => area + polygonArea(loop), 0);

/** Area that two regions share: 0 when they only touch. */
export const overlapArea = (a: Region, b: Region): Mm2 => Math.abs(regionArea(intersect(a, b)));

function combine(operation: ClipType, a: Region, b: Region): Region {
  const paths = booleanOpD(operation, toPaths(a), toPaths(b), FillRule.NonZero, places);
  return paths.map((path) => path.map(({ x, y }): Point => [x, y]));
}

const toPaths = (region: Region) => region.map((loop) => loop.map(([x, y]) => ({ x, y })));
