import { intersection } from "polyclip-ts";
import type { Mm2, Polygon } from "../../lib/plane/types.ts";

/** Area of a ring by the surveyor's formula, its sign dropped. */
function ringArea(ring: readonly (readonly [number, number])[]): number {
  let doubled = 0;
  ring.forEach(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    doubled += x * nextY - nextX * y;
  });
  return Math.abs(doubled) / 2;
}

/** Corners are rounded to so many parts of a millimetre: on nearly equal ones the library gives up. */
const grids = [1e6, 1e5, 1e4];

/** Area two outlines share, by another library than the one that lays them. */
export const sharedArea = (one: Polygon, two: Polygon): Mm2 => sharedByRings([one], [two]);

/** As `sharedArea`, for outlines with the holes in them after them. */
export function sharedByRings(one: readonly Polygon[], two: readonly Polygon[]): Mm2 {
  const faults: unknown[] = [];
  for (const grid of grids) {
    try {
      return sharedOnGrid(one, two, grid);
    } catch (fault) {
      faults.push(fault);
    }
  }
  throw new AggregateError(faults, "no grid is coarse enough to compare the outlines");
}

function sharedOnGrid(one: readonly Polygon[], two: readonly Polygon[], grid: number): Mm2 {
  const ring = (outline: Polygon): [number, number][] =>
    outline.map(([x, y]) => [Math.round(x * grid) / grid, Math.round(y * grid) / grid]);
  return intersection(one.map(ring), two.map(ring))
    .flatMap(([outer, ...holes]) => [
      ringArea(outer as [number, number][]),
      ...holes.map((hole) => -ringArea(hole as [number, number][])),
    ])
    .reduce((sum, area) => sum + area, 0);
}

/** The largest area any two outlines share. */
export function worstOverlap(outlines: readonly Polygon[]): Mm2 {
  let worst = 0;
  outlines.forEach((one, i) => {
    for (const two of outlines.slice(i + 1)) {
      if (boxesMeet(one, two)) worst = Math.max(worst, sharedArea(one, two));
    }
  });
  return worst;
}

function boxesMeet(one: Polygon, two: Polygon): boolean {
  const range = (outline: Polygon, axis: 0 | 1): readonly [number, number] => [
    Math.min(...outline.map((point) => point[axis])),
    Math.max(...outline.map((point) => point[axis])),
  ];
  return ([0, 1] as const).every((axis) => {
    const [low, high] = range(one, axis);
    const [otherLow, otherHigh] = range(two, axis);
    return low < otherHigh && otherLow < high;
  });
}
