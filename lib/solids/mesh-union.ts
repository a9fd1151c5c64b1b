import type { Count, Mm } from "../plane/types.ts";
import type { BlockSpec } from "../project/types.ts";
import { meshBlock, type BlockMesh } from "./mesh-block.ts";
import { distanceFrom } from "./surfaces.ts";
import { unionMesh, type UnionMesh } from "./union-mesh.ts";

export interface MeshedUnion {
  readonly meshes: readonly BlockMesh[];
  readonly union: UnionMesh;
}

/** A corner further than this from a surface it belongs to is none. */
const cornersWithin: Mm = 1e-6;
/** How many times as many facets are tried, one after another. */
const fineness: readonly Count[] = [1, 4];

/**
 * Mesh blocks and join them. Where round sides all but touch, facets can cross though the sides do
 * not: then three surfaces have no common point where the kernel found a corner. Finer facets tell
 * the two apart; where even these cannot, what comes nearest is kept.
 */
export function meshUnion(blocks: readonly BlockSpec[]): MeshedUnion {
  let best: (MeshedUnion & { readonly off: Mm }) | null = null;
  for (const finer of fineness) {
    const meshes = blocks.map((block) => meshBlock(block, finer));
    const union = unionMesh(meshes);
    const off = worstCorner(union);
    if (best === null || off < best.off) best = { meshes, union, off };
    if (off < cornersWithin) break;
  }
  return best!;
}

/** How far the worst corner lies off one of its surfaces. */
function worstCorner({ points, triangles, surfaces }: UnionMesh): Mm {
  return triangles.reduce((worst, { corners, surface }) => {
    const off = corners.map((i) => Math.abs(distanceFrom(surfaces[surface]!, points[i]!)));
    return Math.max(worst, ...off);
  }, 0);
}
