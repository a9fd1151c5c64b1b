import type { Count, Mm } from "../plane/types.ts";
import { closeSlivers } from "./close-slivers.ts";
import type { BlockMesh } from "./mesh-block.ts";
import { dropOvershoots } from "./drop-overshoots.ts";
import { uniteMeshes } from "./mesh-kernel.ts";
import { distance3 } from "./points3.ts";
import { polishPoint } from "./polish-points.ts";
import { isSameSurface } from "./surfaces.ts";
import { weldPoints } from "./weld-points.ts";
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
/** The kernel's single precision is good to this, at a metre's reach. */
const kernelWithin: Mm = 1e-3;

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
  const points = union.points.map((point, i) => {
    const own = [...around[i]!].map((surface) => surfaces[surface]!);
    return tipNear(point, own) ?? polishPoint(point, own);
  });
  return tidy({ points, triangles, surfaces });
}

/** What one of these takes out can bring two corners together for the next: until nothing is left to do. */
function tidy(mesh: UnionMesh): UnionMesh {
  const tidied = closeSlivers(dropOvershoots(weldPoints(mesh)));
  return tidied === mesh ? mesh : tidy(tidied);
}

/** A tip is a corner of its cone alone: nothing but the cone says where it lies. */
function tipNear(point: Point3, surfaces: readonly Surface[]): Point3 | null {
  const cone = surfaces.find(
    (surface) => surface.kind === "cone" && distance3(surface.tip, point) < kernelWithin,
  );
  return cone?.kind === "cone" ? cone.tip : null;
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
