import type { Count, Mm } from "../plane/types.ts";
import type { CutItem } from "./cut-job.ts";
import { type Division, divideBlock, fitsWhole, turnsOf } from "./divide-block.ts";
import type { Layering } from "./list-layerings.ts";
import type { SlabSize } from "./plan-slabs.ts";
import type { Part } from "./types.ts";

/** How many copies of parts are glued up in which way, though they need not be. */
export interface GluedCopies {
  readonly layerings: readonly Layering[];
  readonly counts: readonly Count[];
}

/**
 * The blocks of a part, each copy whole where some slab holds it. Old slabs that are not sold hold
 * only so many: what they cannot take is glued up from parts that sold slabs hold. The first copies
 * are glued up as they are asked to be.
 */
export function listBlocks(
  part: Part,
  slabs: readonly SlabSize[],
  {
    kerf,
    spare,
    glued,
  }: { readonly kerf: Mm; readonly spare: Map<string, Count>; readonly glued: GluedCopies },
): readonly CutItem[] {
  const sizesOf = (list: readonly SlabSize[]) => list.map(({ size }) => size);
  const sold = slabs.filter(({ isSold = true }) => isSold);
  const old = slabs.filter(({ isSold = true, size }) => !isSold && fitsWhole(part.size, [size]));
  const isWhole = sold.length === 0 || fitsWhole(part.size, sizesOf(sold));
  const asked = glued.layerings.flatMap(({ part: id, division }, i): readonly Division[] =>
    id === part.id ? Array.from({ length: glued.counts[i] ?? 0 }, () => division) : [],
  );
  return Array.from({ length: part.copies }, (_, copy) => {
    const holds =
      isWhole || asked[copy] !== undefined
        ? undefined
        : old.find(({ id, have }) => (spare.get(id) ?? have) > 0);
    if (holds !== undefined) spare.set(holds.id, (spare.get(holds.id) ?? holds.have) - 1);
    const from = holds === undefined ? (sold.length === 0 ? slabs : sold) : [holds];
    const blocks = asked[copy] ?? divideBlock(part.size, sizesOf(from));
    return blocks.map((size, layer): CutItem => {
      const withKerf = size.map((each) => each + kerf);
      return {
        part: part.id,
        label: part.label,
        copy: copy + 1,
        layer: [layer + 1, blocks.length],
        outline: null,
        ways: part.canTurn || blocks.length > 1 ? turnsOf(withKerf) : [withKerf],
        ...(part.twin === undefined ? {} : { twin: part.twin }),
        ...(part.leavesSpare === true && copy + 1 === part.copies ? { hasSpare: true } : {}),
      };
    });
  }).flat();
}
