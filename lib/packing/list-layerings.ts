import type { Count } from "../plane/types.ts";
import { type Division, divideBlock } from "./divide-block.ts";
import type { SlabSize } from "./plan-slabs.ts";
import type { Part } from "./types.ts";

/** A way to glue a part up from slabs on hand, though a slab that is sold may hold it whole. */
export interface Layering {
  readonly part: string;
  readonly copies: Count;
  readonly division: Division;
}

/** A block glued up of more than this is more work than a new slab is worth. @source our choice */
const mostLayers: Count = 4;

/**
 * Every way to glue a part up from one kind of slab on hand. Two wedges that share a blank stay
 * whole: the cut between them runs through it.
 */
export function listLayerings(
  parts: readonly Part[],
  slabs: readonly SlabSize[],
): readonly Layering[] {
  const onHand = slabs.filter(({ have }) => have > 0);
  if (slabs.length < 2) return [];
  return parts.flatMap(({ id, copies, size, twin }) => {
    if (twin !== undefined) return [];
    const divisions = onHand
      .map((slab) => divideBlock(size, [slab.size]))
      .filter(({ length }) => length > 1 && length <= mostLayers);
    const different = new Map(divisions.map((each) => [JSON.stringify(each), each]));
    return [...different.values()].map((division): Layering => ({ part: id, copies, division }));
  });
}
