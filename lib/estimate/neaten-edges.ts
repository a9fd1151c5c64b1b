import type { Mm, Ratio } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import { flatThreadRatio, overedgeThreadRatio } from "./thread-ratio.ts";
import type { Work } from "./types.ts";

export type Neatening = "zigzag" | "overedge";

/** Width of a stitch that holds a raw edge. @source common practice, no source */
export const neatenWidth: Mm = 5;
/** Its length along the edge. @source common practice, no source */
export const neatenStitch: Mm = 2.5;
/**
 * Thread for a length neatened by zigzag lockstitch, class 304.
 *
 * @source Coats average table, from memory: 7.0; the guide that was seen prints 5.5, which buys less
 */
const zigzagRatio: Ratio = 7;

/** How the edges of a cover are neatened, null where they are left raw. */
export const neateningOf = (cover: Cover, { project }: Work): Neatening | null =>
  project.solids.find(({ id }) => id === cover.solid)?.cover?.neaten ?? null;

/** Edges of all its panels, once round each. */
export const rawEdges = (cover: Cover): Mm =>
  cover.pieces
    .filter(({ panel }) => panel !== null)
    .reduce(
      (sum, { cut, edges }) => sum + cut * edges.reduce((run, { length }) => run + length, 0),
      0,
    );

/**
 * Thread for a length of edge: by the table or by the edge's thickness, whichever buys more.
 *
 * @param thickness of one layer, null where it is not known
 */
export function neatenRatio(how: Neatening, thickness: Mm | null): Ratio {
  if (how === "zigzag") return zigzagRatio;
  const edge = { width: neatenWidth, thickness: thickness ?? 0, stitch: neatenStitch };
  return Math.max(flatThreadRatio("504"), overedgeThreadRatio(edge));
}
