import type { Count, Mm } from "../plane/types.ts";
import type { SlabStock } from "../project/types.ts";
import { type CutItem, type CutJob, content } from "./cut-job.ts";
import { divideBlock, fitsWhole, turnsOf } from "./divide-block.ts";
import { type CutOptions, type SizeRules, cutWords, makePlans } from "./make-plans.ts";
import { nameShortage } from "./name-shortage.ts";
import { packCuts } from "./pack-cuts.ts";
import type { CutPlan, Part } from "./types.ts";

/** One size of a slab. */
export type SlabSize = SlabStock & SizeRules;

/**
 * Cut blocks from foam slabs by cuts that go right across. Any of a block's three sizes may lie
 * along the thickness; what is thinner is sliced down, what is thicker or larger is glued up from
 * parts. Slabs on hand are used before any is bought. One plan for each kind of slab, in order.
 *
 * The kerf of all kinds is the widest one. No slabs give no plans.
 */
export function planSlabs(
  parts: readonly Part[],
  slabs: readonly SlabSize[],
  options: CutOptions = {},
): readonly CutPlan[] {
  if (slabs.length === 0) return [];
  const job = makeSlabJob(parts, slabs);
  const packed = packCuts(job, options.tries);
  const short = nameShortage(
    slabs.map(({ label, have, isSold = true }) => ({ label, have, isSold })),
    packed,
    job,
    (trimmed) => makeSlabJob(trimmed, slabs),
    parts,
    cutWords(options),
  );
  const stocks = slabs.map(({ id, size, have, price, isSold = true }) => ({
    id,
    kind: "slab" as const,
    size: size,
    have,
    price,
    isSold,
  }));
  return makePlans(job, stocks, packed, short, parts, options);
}

function makeSlabJob(parts: readonly Part[], slabs: readonly SlabSize[]): CutJob {
  const kerf = Math.max(...slabs.map((slab) => slab.kerf));
  const spare = new Map<string, Count>();
  const hasPrices = slabs.every(({ price, isSold = true }) => !isSold || price !== null);
  return {
    kerf,
    items: parts.flatMap((part) => listBlocks(part, slabs, { kerf, spare })),
    stocks: slabs.map(({ size, have, price, isSold = true, isFirst = false }) => ({
      size: size.map((each) => each + kerf),
      have,
      cost: (hasPrices ? price : null) ?? content(size) / 1e6,
      isSold,
      isFirst,
    })),
  };
}

/**
 * The blocks of a part, each copy whole where some slab holds it. Old slabs that are not sold hold
 * only so many: what they cannot take is glued up from parts that sold slabs hold.
 */
function listBlocks(
  part: Part,
  slabs: readonly SlabSize[],
  { kerf, spare }: { readonly kerf: Mm; readonly spare: Map<string, Count> },
): readonly CutItem[] {
  const sizesOf = (list: readonly SlabSize[]) => list.map(({ size }) => size);
  const sold = slabs.filter(({ isSold = true }) => isSold);
  const old = slabs.filter(({ isSold = true, size }) => !isSold && fitsWhole(part.size, [size]));
  const isWhole = sold.length === 0 || fitsWhole(part.size, sizesOf(sold));
  return Array.from({ length: part.copies }, (_, copy) => {
    const holds = isWhole ? undefined : old.find(({ id, have }) => (spare.get(id) ?? have) > 0);
    if (holds !== undefined) spare.set(holds.id, (spare.get(holds.id) ?? holds.have) - 1);
    const from = holds === undefined ? (sold.length === 0 ? slabs : sold) : [holds];
    const blocks = divideBlock(part.size, sizesOf(from));
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
      };
    });
  }).flat();
}
