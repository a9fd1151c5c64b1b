import type { Count } from "../plane/types.ts";

/**
 * Neighbours of triangles. Half-edge 3t + i runs from corner i of triangle t to the next corner;
 * its twin runs the other way in the neighbouring triangle.
 */
export interface HalfEdges {
  readonly from: (half: Count) => Count;
  readonly to: (half: Count) => Count;
  readonly twin: (half: Count) => Count;
  readonly next: (half: Count) => Count;
  readonly triangleOf: (half: Count) => Count;
  readonly count: Count;
}

export function linkHalfEdges(triangles: readonly (readonly [Count, Count, Count])[]): HalfEdges {
  const corner = triangles.flat();
  const next = (half: Count): Count => (half % 3 === 2 ? half - 2 : half + 1);
  const byEnds = new Map<string, Count[]>();
  corner.forEach((from, half) => {
    const key = `${from} ${corner[next(half)]}`;
    byEnds.set(key, [...(byEnds.get(key) ?? []), half]);
  });
  const twins = corner.map((from, half) => {
    // An edge that four triangles share is met in order: the solids only touch along it.
    const mates = byEnds.get(`${corner[next(half)]} ${from}`) ?? [];
    const own = byEnds.get(`${from} ${corner[next(half)]}`)!.indexOf(half);
    return mates[own] ?? mates[0] ?? half;
  });
  return {
    from: (half) => corner[half]!,
    to: (half) => corner[next(half)]!,
    twin: (half) => twins[half]!,
    next,
    triangleOf: (half) => Math.floor(half / 3),
    count: corner.length,
  };
}
