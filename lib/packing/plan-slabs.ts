import type { Count } from "../plane/types.ts";
import type { SlabStock } from "../project/types.ts";
import { type CutJob, content } from "./cut-job.ts";
import { type GluedCopies, listBlocks } from "./list-blocks.ts";
import { listLayerings } from "./list-layerings.ts";
import { type CutOptions, type SizeRules, cutWords, makePlans } from "./make-plans.ts";
import { nameShortage } from "./name-shortage.ts";
import { saveByLayers } from "./save-by-layers.ts";
import type { CutPlan, Part } from "./types.ts";

/** One size of a slab. */
export type SlabSize = SlabStock & SizeRules;

/**
 * Cut blocks from foam slabs by cuts that go right across. Any of a block's three sizes may lie
 * along the thickness; what is thinner is sliced down, what is thicker or larger is glued up from
 * parts. Slabs on hand are used before any is bought: where that saves buying, a block that a sold
 * slab would hold whole is glued up from them. One plan for each kind of slab, in order.
 *
 * The kerf of all kinds is the widest one. No slabs give no plans.
 */
export function planSlabs(
  parts: readonly Part[],
  slabs: readonly SlabSize[],
  options: CutOptions = {},
): readonly CutPlan[] {
  if (slabs.length === 0) return [];
  const layerings = listLayerings(parts, slabs);
  const { job, packed, counts } = saveByLayers(
    layerings,
    (tried) => makeSlabJob(parts, slabs, { layerings, counts: tried }),
    options.tries,
  );
  const short = nameShortage(
    slabs.map(({ label, have, isSold = true }) => ({ label, have, isSold })),
    packed,
    job,
    (trimmed) => makeSlabJob(trimmed, slabs, { layerings: listLayerings(trimmed, slabs), counts }),
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

function makeSlabJob(
  parts: readonly Part[],
  slabs: readonly SlabSize[],
  glued: GluedCopies,
): CutJob {
  const kerf = Math.max(...slabs.map((slab) => slab.kerf));
  const spare = new Map<string, Count>();
  const hasPrices = slabs.every(({ price, isSold = true }) => !isSold || price !== null);
  return {
    kerf,
    items: parts.flatMap((part) => listBlocks(part, slabs, { kerf, spare, glued })),
    stocks: slabs.map(({ size, have, price, isSold = true, isFirst = false }) => ({
      size: size.map((each) => each + kerf),
      have,
      cost: (hasPrices ? price : null) ?? content(size) / 1e6,
      isSold,
      isFirst,
    })),
  };
}
