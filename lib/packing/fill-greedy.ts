import type { Count, Mm } from "../plane/types.ts";
import {
  type CutBin,
  type CutItem,
  type CutJob,
  type CutStock,
  type CutTree,
  content,
  fitsIn,
  holdsItem,
  isSold,
  sameSize,
} from "./cut-job.ts";

/** A piece of stock while it is being filled. */
interface Growing {
  at: readonly Mm[];
  size: readonly Mm[];
  kind: "item" | "free" | "split";
  item: Count;
  axis: Count;
  near: Growing | null;
  far: Growing | null;
}

interface OpenBin {
  readonly stock: Count;
  readonly isBought: boolean;
  readonly root: Growing;
  readonly free: Growing[];
}

/** What decides among the free pieces an item could be cut from. */
export type FitRule = "tightest" | "smallest" | "fullest-side";

/**
 * Cut the items one after another from the free piece they fit best; open new stock when none is
 * left, stock on hand first. Items that fit no stock are left out.
 *
 * @source Jylänki 2010, "A thousand ways to pack the bin" (guillotine fill), carried over to three sizes
 */
export function fillGreedy(
  job: CutJob,
  order: readonly Count[],
  rule: FitRule,
  prefersWide: boolean,
): readonly CutBin[] {
  const bins: OpenBin[] = [];
  for (const index of order) {
    const item = job.items[index]!;
    const spot = bestSpot(bins, item, rule) ?? openBin(job, bins, item, rule);
    if (spot === null) continue;
    const { bin, piece, way } = spot;
    bin.free.splice(bin.free.indexOf(piece), 1);
    cutOut(piece, way, index, bin.free, prefersWide);
  }
  return bins.map(({ stock, isBought, root }) => ({ stock, isBought, tree: finish(root) }));
}

interface Spot {
  readonly bin: OpenBin;
  readonly piece: Growing;
  readonly way: readonly Mm[];
}

function bestSpot(bins: readonly OpenBin[], item: CutItem, rule: FitRule): Spot | null {
  let best: Spot | null = null;
  let bestScore = Infinity;
  for (const bin of bins) {
    for (const piece of bin.free) {
      for (const way of item.ways) {
        if (!fitsIn(way, piece.size)) continue;
        const score = scoreFit(piece.size, way, rule);
        if (score < bestScore) [best, bestScore] = [{ bin, piece, way }, score];
      }
    }
  }
  return best;
}

function scoreFit(room: readonly Mm[], way: readonly Mm[], rule: FitRule): number {
  const spare = room.map((each, axis) => Math.max(0, each - way[axis]!));
  switch (rule) {
    case "tightest":
      return Math.min(...spare) + 1e-4 * Math.max(...spare);
    case "smallest":
      return content(room) + 1e-4 * Math.min(...spare);
    case "fullest-side":
      return -spare.filter((each) => each <= sameSize).length * 1e6 + Math.max(...spare);
  }
}

/** New stock: on hand what goes first, then the smallest that holds the item; else the cheapest to buy. */
function openBin(job: CutJob, bins: OpenBin[], item: CutItem, rule: FitRule): Spot | null {
  const kinds = job.stocks
    .map((stock, index) => ({ stock, index }))
    .filter(({ stock }) => holdsItem(stock, item));
  const onHand = kinds
    .filter(({ stock, index }) => bins.filter((bin) => bin.stock === index).length < stock.have)
    .sort(
      (a, b) => late(a.stock) - late(b.stock) || content(a.stock.size) - content(b.stock.size),
    )[0];
  const sold = kinds.filter(({ stock }) => isSold(stock));
  const chosen = onHand ?? sold.sort((a, b) => a.stock.cost - b.stock.cost)[0];
  if (chosen === undefined) return null;
  const root = freePiece(
    chosen.stock.size.map(() => 0),
    chosen.stock.size,
  );
  const bin = { stock: chosen.index, isBought: onHand === undefined, root, free: [root] };
  bins.push(bin);
  return bestSpot([bin], item, rule);
}

const late = (stock: CutStock): number => (stock.isFirst === true ? 0 : 1);

const freePiece = (at: readonly Mm[], size: readonly Mm[]): Growing => ({
  at,
  size,
  kind: "free",
  item: -1,
  axis: 0,
  near: null,
  far: null,
});

/** Cut a block out of the lowest corner of a free piece, one right-across cut for each spare size. */
function cutOut(
  piece: Growing,
  way: readonly Mm[],
  item: Count,
  free: Growing[],
  prefersWide: boolean,
): void {
  const axes = spareAxes(piece.size, way, prefersWide);
  let current = piece;
  for (const axis of axes) {
    const near = freePiece(current.at, withSize(current.size, axis, way[axis]!));
    const far = freePiece(
      withSize(current.at, axis, current.at[axis]! + way[axis]!),
      withSize(current.size, axis, current.size[axis]! - way[axis]!),
    );
    Object.assign(current, { kind: "split", axis, near, far });
    free.push(far);
    current = near;
  }
  current.kind = "item";
  current.item = item;
}

/** Axes with something to cut off: the cut that leaves the largest free piece first, or last. */
export function spareAxes(
  room: readonly Mm[],
  way: readonly Mm[],
  prefersWide: boolean,
): readonly Count[] {
  const share = (axis: Count): number => (room[axis]! - way[axis]!) / room[axis]!;
  return room
    .map((_, axis) => axis)
    .filter((axis) => room[axis]! - way[axis]! > sameSize)
    .sort((a, b) => (prefersWide ? share(b) - share(a) : share(a) - share(b)) || b - a);
}

export const withSize = (size: readonly Mm[], axis: Count, value: Mm): readonly Mm[] =>
  size.map((each, i) => (i === axis ? value : each));

function finish(piece: Growing): CutTree {
  const { kind, at, size, item, axis, near, far } = piece;
  if (kind !== "split" || near === null || far === null) {
    return { kind: kind === "item" ? "item" : "free", at, size, item };
  }
  return { kind: "split", at, size, axis, near: finish(near), far: finish(far) };
}
