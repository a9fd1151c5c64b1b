import type { Count, Mm } from "../plane/types.ts";
import type { BoardStock } from "../project/types.ts";
import { type CutBin, type CutJob, type CutTree } from "./cut-job.ts";
import { listItems } from "./list-items.ts";
import { type CutOptions, makePlans, sayMillimetres } from "./make-plans.ts";
import { nameShortage } from "./name-shortage.ts";
import { type PackedCuts, packCuts } from "./pack-cuts.ts";
import { packLengths } from "./pack-lengths.ts";
import type { CutPlan, Part, Shortfall } from "./types.ts";

/** What cutting to length needs to know of a board, batten, cord or zip chain. */
export type LengthStock = Pick<BoardStock, "id" | "label" | "length" | "kerf" | "have" | "price">;

/**
 * Cut parts to length from boards, a kerf lost between neighbours. The last piece of a board needs
 * no cut when it ends flush. One kind of board: as few boards as can be, with a proved bound.
 * Several kinds: those on hand first, then the cheapest to buy. Parts longer than every board are
 * left out and named in `short`.
 */
export function planBoards(
  parts: readonly Part[],
  boards: readonly LengthStock[],
  options: CutOptions = {},
): readonly CutPlan[] {
  if (boards.length === 0) return [];
  const say = options.say ?? sayMillimetres;
  const longest = Math.max(...boards.map(({ length }) => length));
  const fitting = parts.filter(({ size }) => size[0]! <= longest + 1e-3);
  const job = makeBoardJob(fitting, boards);
  const packed = packBoardJob(job, options.tries);
  const shortage = nameShortage(
    boards.map(({ label, have }) => ({ label, have })),
    packed,
    job,
    (trimmed) => makeBoardJob(trimmed, boards),
    fitting,
    say,
  );
  const tooLong = parts
    .filter((part) => !fitting.includes(part))
    .map((part): Shortfall => ({
      part: part.id,
      reason: `is ${say(part.size[0]!)} long, more than the longest of ${say(longest)}`,
      remedy: "Join it of two lengths, or use a longer one",
    }));
  const stocks = boards.map(({ id, length, have }) => ({
    id,
    kind: "board" as const,
    size: [length],
    have,
  }));
  return makePlans(job, stocks, packed, [...tooLong, ...shortage], fitting, options);
}

function makeBoardJob(parts: readonly Part[], boards: readonly LengthStock[]): CutJob {
  const kerf = Math.max(...boards.map((board) => board.kerf));
  const hasPrices = boards.every(({ price }) => price !== null);
  return {
    kerf,
    items: listItems(parts, kerf, ({ size }) => [[size[0]!]]),
    stocks: boards.map(({ length, have, price }) => ({
      size: [length + kerf],
      have,
      cost: (hasPrices ? price : null) ?? length,
    })),
  };
}

function packBoardJob(job: CutJob, tries: Count | undefined): PackedCuts {
  if (job.stocks.length > 1 || job.items.length === 0) return packCuts(job, tries);
  return packOneKind(job);
}

/** Whole ten-thousandths of a millimetre, so that patterns add up without rounding. */
const fine = 10_000;

function packOneKind(job: CutJob): PackedCuts {
  const [stock] = job.stocks;
  const lengths = job.items.map((item) => Math.round(item.ways[0]![0]! * fine));
  const sizes = [...new Set(lengths)].sort((a, b) => b - a);
  const waiting = sizes.map((size) => lengths.flatMap((each, i) => (each === size ? [i] : [])));
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
  return { bins, lowerBound, isProven: bins.length === lowerBound };
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
