import type { Count, Mm } from "../plane/types.ts";
import type { BoardStock } from "../project/types.ts";
import { type CutBin, type CutJob, type CutTree, isSold } from "./cut-job.ts";
import { listItems } from "./list-items.ts";
import { type CutOptions, type SizeRules, cutWords, makePlans } from "./make-plans.ts";
import { nameShortage } from "./name-shortage.ts";
import { type PackedCuts, boughtCost, isCheaper, packCuts } from "./pack-cuts.ts";
import { packLengths } from "./pack-lengths.ts";
import { packSeveral } from "./pack-several.ts";
import type { CutPlan, Part, Shortfall } from "./types.ts";

/** What cutting to length needs to know of a board, batten, cord or zip chain. */
export type LengthStock = Pick<BoardStock, "id" | "label" | "length" | "kerf" | "have" | "price"> &
  SizeRules;

/**
 * Cut parts to length from boards, a kerf lost between neighbours. The last piece of a board needs
 * no cut when it ends flush. One kind of board: as few boards as can be, with a proved bound.
 * Several kinds: those on hand first, then the cheapest to buy, with a bound on what any plan must
 * buy for. Parts longer than every board are left out and named in `short`.
 */
export function planBoards(
  parts: readonly Part[],
  boards: readonly LengthStock[],
  options: CutOptions = {},
): readonly CutPlan[] {
  if (boards.length === 0) return [];
  const words = cutWords(options);
  const { say } = words;
  const longest = Math.max(...boards.map(({ length }) => length));
  const fitting = parts.filter(({ size }) => size[0]! <= longest + 1e-3);
  const job = makeBoardJob(fitting, boards);
  const packed = packBoardJob(job, options.tries);
  const shortage = nameShortage(
    boards.map(({ label, have, isSold = true }) => ({ label, have, isSold })),
    packed,
    job,
    (trimmed) => makeBoardJob(trimmed, boards),
    fitting,
    words,
  );
  const tooLong = parts
    .filter((part) => !fitting.includes(part))
    .map((part): Shortfall => ({
      part: part.id,
      reason: `is ${say(part.size[0]!)} long, more than the longest of ${say(longest)}`,
      remedy: "Join it of two lengths, or use a longer one",
    }));
  const stocks = boards.map(({ id, length, have, price, isSold = true }) => ({
    id,
    kind: "board" as const,
    size: [length],
    have,
    price,
    isSold,
  }));
  return makePlans(job, stocks, packed, [...tooLong, ...shortage], fitting, options);
}

function makeBoardJob(parts: readonly Part[], boards: readonly LengthStock[]): CutJob {
  const kerf = Math.max(...boards.map((board) => board.kerf));
  const hasPrices = boards.every(({ price, isSold = true }) => !isSold || price !== null);
  return {
    kerf,
    items: listItems(parts, kerf, ({ size }) => [[size[0]!]]),
    stocks: boards.map(({ length, have, price, isSold = true, isFirst = false }) => ({
      size: [length + kerf],
      have,
      cost: (hasPrices ? price : null) ?? length,
      isSold,
      isFirst,
    })),
  };
}

function packBoardJob(job: CutJob, tries: Count | undefined): PackedCuts {
  if (job.items.length === 0) return packCuts(job, tries);
  return job.stocks.length > 1 ? packKinds(job, tries) : packOneKind(job);
}

/** Several lengths: whichever is cheaper, filled piece by piece or by patterns in shares. */
function packKinds(job: CutJob, tries: Count | undefined): PackedCuts {
  const filled = packCuts(job, tries);
  if (filled.isProven) return filled;
  const { sizes, waiting } = groupLengths(job);
  const kinds = job.stocks.flatMap((stock, index) => {
    const capacity = Math.round(stock.size[0]! * fine) + sizes.length;
    const onHand = { index, capacity, cost: 0, most: stock.have };
    const sold = { index, capacity, cost: stock.cost, most: Infinity };
    return [...(stock.have > 0 ? [onHand] : []), ...(isSold(stock) ? [sold] : [])];
  });
  const demand = waiting.map((items) => items.length);
  const { patterns, costBound } = packSeveral(kinds, sizes, demand, filled.cost + 1e-6);
  const cut = patterns?.map(({ kind, counts }): CutBin => {
    const { index, most } = kinds[kind]!;
    const items = counts.flatMap((count, i) => waiting[i]!.splice(0, count));
    const tree = cutInRow(job, items, 0, job.stocks[index]!.size[0]!);
    return { stock: index, isBought: most === Infinity, tree };
  });
  const bins = cut !== undefined && isCheaper(job, cut, filled.bins) ? cut : filled.bins;
  const cost = boughtCost(job, bins);
  const bound = Math.min(cost, Math.max(costBound, filled.costBound));
  return { ...filled, bins, cost, costBound: bound, isProven: cost <= bound + 1e-9 };
}

/** Whole ten-thousandths of a millimetre, so that patterns add up without rounding. */
const fine = 10_000;

function packOneKind(job: CutJob): PackedCuts {
  const [stock] = job.stocks;
  const { sizes, waiting } = groupLengths(job);
  const capacity = Math.round(stock!.size[0]! * fine) + sizes.length;
  const { patterns, lowerBound } = packLengths(
    Math.max(capacity, sizes[0]!),
    sizes,
    waiting.map((items) => items.length),
  );
  const bins = patterns.map((pattern, index): CutBin => {
    const items = pattern.flatMap((count, i) => waiting[i]!.splice(0, count));
    return {
      stock: 0,
      isBought: index >= stock!.have,
      tree: cutInRow(job, items, 0, stock!.size[0]!),
    };
  });
  const { cost, have } = stock!;
  return {
    bins,
    lowerBound,
    isProven: bins.length === lowerBound,
    cost: cost * Math.max(0, bins.length - have),
    costBound: cost * Math.max(0, lowerBound - have),
  };
}

/** The different lengths, longest first, and the items that have each. */
function groupLengths(job: CutJob): {
  readonly sizes: readonly number[];
  readonly waiting: readonly Count[][];
} {
  const lengths = job.items.map((item) => Math.round(item.ways[0]![0]! * fine));
  const sizes = [...new Set(lengths)].sort((a, b) => b - a);
  const waiting = sizes.map((size) => lengths.flatMap((each, i) => (each === size ? [i] : [])));
  return { sizes, waiting };
}

/** Items cut off one after another from the start of a board. */
function cutInRow(job: CutJob, items: readonly Count[], from: Mm, length: Mm): CutTree {
  const [item, ...rest] = items;
  if (item === undefined) return { kind: "free", at: [from], size: [length], item: -1 };
  const need = job.items[item]!.ways[0]![0]!;
  const near: CutTree = { kind: "item", at: [from], size: [need], item };
  if (rest.length === 0 && length - need <= 1e-3) return near;
  const far = cutInRow(job, rest, from + need, length - need);
  return { kind: "split", at: [from], size: [length], axis: 0, near, far };
}
