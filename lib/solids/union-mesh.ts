import type { Count } from "../plane/types.ts";
import type { BlockMesh } from "./mesh-block.ts";
import { uniteMeshes } from "./mesh-kernel.ts";
import { polishPoint } from "./polish-points.ts";
import { isSameSurface } from "./surfaces.ts";
import type { Point3, Surface } from "./types.ts";

/** The outside of all blocks together; each triangle knows its surface, block and side. */
export interface UnionMesh {
  readonly points: readonly Point3[];
  readonly triangles: readonly UnionTriangle[];
  readonly surfaces: readonly Surface[];
}

export interface UnionTriangle {
  readonly corners: readonly [Count, Count, Count];
  readonly surface: Count;
  readonly block: Count;
  readonly side: Count;
  readonly facet: Count;
}

const facetsPerSide = 4096;

/** Join block meshes into one outside and put its corners exactly where the surfaces meet. */
export function unionMesh(blocks: readonly BlockMesh[]): UnionMesh {
  const { surfaces, numbers } = sharedSurfaces(blocks);
  const union = uniteMeshes(
    blocks.map(({ points, triangles }) => ({
      points,
      triangles: triangles.map(({ corners, side, facet }) => ({
        corners,
        tag: side * facetsPerSide + facet,
      })),
    })),
  );
  const triangles = union.triangles.map((corners, i): UnionTriangle => {
    const block = union.owners[i]!;
    const side = Math.floor(union.tags[i]! / facetsPerSide);
    return {
      corners,
      surface: numbers[block]![side]!,
      block,
      side,
      facet: union.tags[i]! % facetsPerSide,
    };
  });
  const around = union.points.map(() => new Set<Count>());
  triangles.forEach(({ corners, surface }) =>
    corners.forEach((corner) => around[corner]!.add(surface)),
  );
  const points = union.points.map((point, i) =>
    polishPoint(
      point,
      [...around[i]!].map((surface) => surfaces[surface]!),
    ),
  );
  return { points, triangles, surfaces };
}

/** Flush sides of different blocks share one surface. */
function sharedSurfaces(blocks: readonly BlockMesh[]) {
  const surfaces: Surface[] = [];
  const numbers = blocks.map(({ sides }) =>
    sides.map(({ surface }) => {
      const known = surfaces.findIndex((other) => isSameSurface(other, surface));
      return known >= 0 ? known : surfaces.push(surface) - 1;
    }),
  );
  return { surfaces, numbers };
}
