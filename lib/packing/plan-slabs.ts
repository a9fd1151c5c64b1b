import type { Mm } from "../plane/types.ts";
import type { SlabStock } from "../project/types.ts";
import { type CutItem, type CutJob, content } from "./cut-job.ts";
import { divideBlock, turnsOf } from "./divide-block.ts";
import { type CutOptions, makePlans, sayMillimetres } from "./make-plans.ts";
import { nameShortage } from "./name-shortage.ts";
import { packCuts } from "./pack-cuts.ts";
import type { CutPlan, Part } from "./types.ts";

/**
 * Cut blocks from foam slabs by cuts that go right across. Any of a block's three sizes may lie
 * along the thickness; what is thinner is sliced down, what is thicker or larger is glued up from
 * parts. Slabs on hand are used before any is bought. One plan for each kind of slab, in order.
 *
 * The kerf of all kinds is the widest one. No slabs give no plans.
 */
export function planSlabs(
  parts: readonly Part[],
  slabs: readonly SlabStock[],
  options: CutOptions = {},
): readonly CutPlan[] {
  if (slabs.length === 0) return [];
  const job = makeSlabJob(parts, slabs);
  const packed = packCuts(job, options.tries);
  const short = nameShortage(
    slabs.map(({ label, have }) => ({ label, have })),
    packed,
    job,
    (trimmed) => makeSlabJob(trimmed, slabs),
    parts,
    options.say ?? sayMillimetres,
  );
  const stocks = slabs.map(({ id, size, have }) => ({ id, kind: "slab" as const, size, have }));
  return makePlans(job, stocks, packed, short, parts, options);
}

function makeSlabJob(parts: readonly Part[], slabs: readonly SlabStock[]): CutJob {
  const kerf = Math.max(...slabs.map((slab) => slab.kerf));
  const hasPrices = slabs.every(({ price }) => price !== null);
  return {
    kerf,
    items: parts.flatMap((part) => listBlocks(part, slabs, kerf)),
    stocks: slabs.map(({ size, have, price }) => ({
      size: size.map((each) => each + kerf),
      have,
      cost: (hasPrices ? price : null) ?? content(size) / 1e6,
    })),
  };
}

function listBlocks(part: Part, slabs: readonly SlabStock[], kerf: Mm): readonly CutItem[] {
  const blocks = divideBlock(
    part.size,
    slabs.map(({ size }) => size),
  );
  return Array.from({ length: part.copies }, (_, copy) =>
    blocks.map((size, layer): CutItem => {
      const withKerf = size.map((each) => each + kerf);
      return {
        part: part.id,
        label: part.label,
        copy: copy + 1,
        layer: [layer + 1, blocks.length],
        outline: null,
        ways: part.canTurn || blocks.length > 1 ? turnsOf(withKerf) : [withKerf],
      };
    }),
  ).flat();
}
