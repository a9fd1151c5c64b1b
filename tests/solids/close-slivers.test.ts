import { describe, expect, test } from "vitest";
import { closeSlivers } from "../../lib/solids/close-slivers.ts";
import { linkHalfEdges } from "../../lib/solids/half-edges.ts";
import type { Point3 } from "../../lib/solids/types.ts";
import type { UnionMesh, UnionTriangle } from "../../lib/solids/union-mesh.ts";
import { planeSurface } from "../../lib/solids/mesh-block.ts";

// A tetrahedron whose base is cut in two at 3, the middle of its edge from 0 to 1; a third triangle
// of the base, of a surface of its own, lies flat along that edge.
const points: readonly Point3[] = [
  [0, 0, 0],
  [10, 0, 0],
  [0, 10, 0],
  [5, 0, 0],
  [0, 0, 10],
];
const triangle = (corners: readonly [number, number, number], surface: number): UnionTriangle => ({
  corners,
  surface,
  block: 0,
  side: surface,
  facet: 0,
});
const island: UnionMesh = {
  points,
  surfaces: [planeSurface([0, 0, 0], [0, 0, -1]), planeSurface([0, 0, 0], [0, -1, 0])],
  triangles: [
    triangle([0, 2, 3], 0),
    triangle([3, 2, 1], 0),
    triangle([0, 3, 1], 2),
    triangle([0, 1, 4], 1),
    triangle([1, 2, 4], 3),
    triangle([2, 0, 4], 4),
  ],
};

describe("closing triangles without height", () => {
  const closed = closeSlivers(island);

  test("shares their neighbour out at the corner on the edge", () => {
    const own = closed.triangles.filter(({ surface }) => surface === 1);
    expect(own.map(({ corners }) => corners.toSorted().join(" ")).toSorted()).toEqual([
      "0 3 4",
      "1 3 4",
    ]);
    expect(closed.triangles.some(({ surface }) => surface === 2)).toBe(false);
  });

  test("leaves every edge with one triangle to each side", () => {
    const edges = linkHalfEdges(closed.triangles.map(({ corners }) => corners));
    for (let half = 0; half < edges.count; half++) {
      expect(edges.twin(edges.twin(half))).toBe(half);
      expect(edges.from(edges.twin(half))).toBe(edges.to(half));
    }
  });

  test("leaves a mesh alone that has none", () => {
    expect(closeSlivers(closed)).toBe(closed);
  });
});
