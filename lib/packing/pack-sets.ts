import type { Count, Mm } from "../plane/types.ts";
import { clearAdvance } from "./clear-advance.ts";
import { layBound } from "./lay-bound.ts";
import { makeNoFitTable } from "./no-fit-table.ts";
import { type Block, stackStrips } from "./stack-strips.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** Beyond this many pieces sets are not laid all together. @source our choice */
const mostTogether: Count = 60;
/** So many are, where blocks of sets leave far more cloth than the bound. @source our choice */
const mostAtLast: Count = 320;
/** How far over the bound is far. @source our choice */
const farOver = 1.15;
/** Sets laid together at most where they follow one another in blocks. @source our choice */
const mostInBlock: Count = 6;

export interface SetRules {
  /** Pieces of each kind in one set. */
  readonly counts: readonly Count[];
  readonly copies: Count;
  /** Blocks start at a multiple of this; 0 for anywhere. */
  readonly step: Mm;
  /** One set by itself. */
  readonly single: Strip;
  /** Lays some sets together, on a length without ends. */
  readonly pack: (sets: Count) => Strip;
}

/**
 * Lay many sets of the same pieces: together where they are few, and in blocks of one to six sets that
 * are slid into one another. Which blocks follow one another is chosen so that the whole is shortest:
 * a search over hundreds of pieces finds less in the same time than one over a few dozen.
 *
 * Where that leaves far more than the bound, all are laid together after all.
 *
 * Blocks are worked out once each, so that thirty sets take hardly longer than six.
 */
export function packSets(job: StripJob, { counts, copies, step, single, pack }: SetRules): Strip {
  const perSet = job.items.length / copies;
  const table = makeNoFitTable(job.forms);
  const advance = keepAdvance((one, two) => clearAdvance(one, two, table));
  const most = Math.max(1, Math.min(mostInBlock, copies, Math.floor(mostTogether / perSet)));
  const blocks = Array.from({ length: most }, (_, i): Block => ({
    sets: i + 1,
    strip: i === 0 ? single : pack(i + 1),
  }));
  const rules = { counts, step, walls: job.walls, advance };
  const tried = chooseRows(blocks, copies, ({ strip }) => stepsOf(advance(strip, strip), step)).map(
    (row) => stackStrips(row, rules),
  );
  // Ends of lengths on hand are kept to by the search itself where it can take all pieces.
  const isWhole = copies <= most && job.walls.length === 0;
  if (!isWhole && job.items.length <= mostTogether) tried.push(pack(copies));
  const best = shortest(tried);
  const isFar = best.length > farOver * layBound(job) && job.items.length <= mostAtLast;
  return isFar && !isWhole && job.items.length > mostTogether
    ? shortest([best, pack(copies)])
    : best;
}

const shortest = (strips: readonly Strip[]): Strip =>
  strips.reduce((best, one) => (one.length < best.length - 1e-6 ? one : best));

const stepsOf = (advance: Mm, step: Mm): Mm =>
  step > 0 ? Math.ceil(advance / step - 1e-9) * step : advance;

/** The same two strips are asked for again and again. */
function keepAdvance(find: (one: Strip, two: Strip) => Mm): (one: Strip, two: Strip) => Mm {
  const known = new Map<Strip, Map<Strip, Mm>>();
  return (one, two) => {
    const own = known.get(one) ?? new Map<Strip, Mm>();
    known.set(one, own);
    if (!own.has(two)) own.set(two, find(one, two));
    return own.get(two)!;
  };
}

/**
 * Rows of blocks that make up so many sets: the row of least advance all together that ends with each
 * of the blocks, as the last block counts with its whole length.
 */
function chooseRows(
  blocks: readonly Block[],
  copies: Count,
  advanceOf: (block: Block) => Mm,
): readonly (readonly Block[])[] {
  const least: { readonly cost: Mm; readonly row: readonly Block[] }[] = [{ cost: 0, row: [] }];
  for (let sets = 1; sets <= copies; sets++) {
    const ways = blocks
      .filter((block) => block.sets <= sets)
      .map((block) => {
        const before = least[sets - block.sets]!;
        return { cost: before.cost + advanceOf(block), row: [...before.row, block] };
      });
    least.push(ways.reduce((best, way) => (way.cost < best.cost - 1e-6 ? way : best)));
  }
  return blocks
    .filter(({ sets }) => sets <= copies)
    .map((last) => [...least[copies - last.sets]!.row, last]);
}
