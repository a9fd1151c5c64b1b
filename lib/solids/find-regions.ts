import type { Count } from "../plane/types.ts";
import { linkHalfEdges, type HalfEdges } from "./half-edges.ts";
import { openOut, splitAtSlit, type OpenedOut } from "./open-out.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Surface } from "./types.ts";

/** Triangles that make up one face, and where it must be slit to lie flat. */
export interface Region extends OpenedOut {
  readonly triangles: readonly Count[];
  readonly surface: Surface;
}

/** Group triangles that lie on one surface and hang together into faces. */
export function findRegions(mesh: UnionMesh): {
  regions: Region[];
  edges: HalfEdges;
  regionOf: Count[];
} {
  const edges = linkHalfEdges(mesh.triangles.map(({ corners }) => corners));
  const regionOf = new Array<Count>(mesh.triangles.length).fill(-1);
  const regions: Region[] = [];
  mesh.triangles.forEach((start, index) => {
    if (regionOf[index] !== -1) return;
    const members: Count[] = [];
    const waiting = [index];
    regionOf[index] = regions.length;
    while (waiting.length > 0) {
      const triangle = waiting.pop()!;
      members.push(triangle);
      for (let half = triangle * 3; half < triangle * 3 + 3; half++) {
        const other = edges.triangleOf(edges.twin(half));
        if (regionOf[other] !== -1 || mesh.triangles[other]!.surface !== start.surface) continue;
        regionOf[other] = regions.length;
        waiting.push(other);
      }
    }
    members.sort((a, b) => a - b);
    const surface = mesh.surfaces[start.surface]!;
    const opening = openOut(mesh, edges, members, surface);
    // Where every slit cuts an island off, the island is a face of its own.
    splitAtSlit(members, opening.slit, edges).forEach((triangles) => {
      triangles.forEach((triangle) => (regionOf[triangle] = regions.length));
      regions.push({ triangles, surface, ...opening });
    });
  });
  return { regions, edges, regionOf };
}

/** Whether a half-edge bounds its face: the neighbour is another face, or it lies on the slit. */
export const isBoundary =
  (edges: HalfEdges, regionOf: readonly Count[], regions: readonly Region[]) =>
  (half: Count): boolean => {
    const own = regionOf[edges.triangleOf(half)]!;
    return own !== regionOf[edges.triangleOf(edges.twin(half))] || regions[own]!.slit.has(half);
  };
