import type { Count, Mm } from "../plane/types.ts";
import { type CutJob, type CutTree, content, fitsIn } from "./cut-job.ts";
import { spareAxes, withSize } from "./fill-greedy.ts";

/** Items that can lie in the same ways are one kind. */
interface ItemKind {
  readonly ways: readonly (readonly Mm[])[];
  readonly items: readonly Count[];
}

/** A block that holds a set of items with right-across cuts, and how. */
interface Arrangement {
  readonly size: readonly Mm[];
  readonly axis: Count;
  /** Null for a single item. */
  readonly first: Arrangement | null;
  readonly second: Arrangement | null;
  readonly kind: Count;
}

/**
 * For every set of items the smallest blocks that hold it with right-across cuts: exact, by joining
 * the blocks of every two halves of the set along every axis. Sets are counts of each kind.
 */
export interface Arrangements {
  /** How many items of each kind there are, in mixed-radix order of the set numbers. */
  readonly counts: readonly Count[];
  readonly kinds: readonly ItemKind[];
  readonly fronts: readonly (readonly Arrangement[])[];
}

export interface ArrangeLimits {
  /** Joinings of blocks after which it gives up. */
  readonly budget: Count;
  readonly mostSets: Count;
  /** Waste that no block of a plan worth having holds: blocks with more are left out. */
  readonly mostWaste?: number;
}

/** All arrangements of a job within limits, or null when it would take more joinings or sets. */
export function arrangeExact(
  job: CutJob,
  { budget, mostSets, mostWaste = Infinity }: ArrangeLimits,
): Arrangements | null {
  const kinds = groupItems(job);
  const counts = kinds.map(({ items }) => items.length);
  const total = counts.reduce((all, count) => all * (count + 1), 1);
  if (total > mostSets) return null;
  const fronts: Arrangement[][] = Array.from({ length: total }, () => []);
  const digits = Array.from({ length: total }, (_, set) => readDigits(set, counts));
  const bulk = digits.map((each) =>
    each.reduce((sum, count, kind) => sum + count * content(kinds[kind]!.ways[0]!), 0),
  );
  const largest = Math.max(...job.stocks.map((stock) => content(stock.size)));
  let spent = 0;
  for (let set = 1; set < total; set++) {
    if (bulk[set]! > largest * (1 + 1e-9)) continue;
    const single = digits[set]!.reduce((sum, count) => sum + count, 0) === 1;
    if (single) {
      fronts[set] = singleFront(job, kinds, digits[set]!.indexOf(1));
      continue;
    }
    const front: Arrangement[] = [];
    for (const part of halves(digits[set]!, counts)) {
      const rest = set - part;
      if (part > rest) continue;
      for (const first of fronts[part]!) {
        for (const second of fronts[rest]!) {
          spent += first.size.length;
          joinBlocks(job, { first, second, most: bulk[set]! + mostWaste }, front);
        }
      }
      if (spent > budget) return null;
    }
    fronts[set] = front;
  }
  return { counts, kinds, fronts };
}

function groupItems(job: CutJob): readonly ItemKind[] {
  const kinds = new Map<string, { ways: readonly (readonly Mm[])[]; items: Count[] }>();
  job.items.forEach((item, index) => {
    const key = JSON.stringify(item.ways);
    const known = kinds.get(key);
    if (known) known.items.push(index);
    else kinds.set(key, { ways: item.ways, items: [index] });
  });
  return [...kinds.values()];
}

function readDigits(set: Count, counts: readonly Count[]): readonly Count[] {
  let rest = set;
  return counts.map((count) => {
    const digit = rest % (count + 1);
    rest = Math.floor(rest / (count + 1));
    return digit;
  });
}

/** Every smaller set within a set, as set numbers; the empty and the whole one left out. */
function halves(digits: readonly Count[], counts: readonly Count[]): readonly Count[] {
  let sets = [0];
  let weight = 1;
  digits.forEach((digit, kind) => {
    const step = weight;
    sets = sets.flatMap((set) => Array.from({ length: digit + 1 }, (_, n) => set + n * step));
    weight *= counts[kind]! + 1;
  });
  return sets.slice(1, -1);
}

function singleFront(job: CutJob, kinds: readonly ItemKind[], kind: Count): Arrangement[] {
  const front: Arrangement[] = [];
  for (const size of kinds[kind]!.ways) {
    keepSmallest(job, { size, axis: 0, first: null, second: null, kind }, front);
  }
  return front;
}

function joinBlocks(
  job: CutJob,
  {
    first,
    second,
    most,
  }: { readonly first: Arrangement; readonly second: Arrangement; readonly most: number },
  front: Arrangement[],
): void {
  for (let axis = 0; axis < first.size.length; axis++) {
    const size = first.size.map((each, i) =>
      i === axis ? each + second.size[i]! : Math.max(each, second.size[i]!),
    );
    if (content(size) > most * (1 + 1e-9)) continue;
    keepSmallest(job, { size, axis, first, second, kind: -1 }, front);
  }
}

/** Add a block unless it fits no stock or another is nowhere larger; drop those it beats. */
function keepSmallest(job: CutJob, block: Arrangement, front: Arrangement[]): void {
  if (!job.stocks.some((stock) => fitsIn(block.size, stock.size))) return;
  if (front.some((known) => known.size.every((each, i) => each <= block.size[i]! + 1e-9))) return;
  let kept = 0;
  for (const known of front) {
    if (!known.size.every((each, i) => each >= block.size[i]! - 1e-9)) front[kept++] = known;
  }
  front.length = kept;
  front.push(block);
}

/** The cutting tree of an arrangement in a piece of stock; takes items from the kinds' lists. */
export function growTree(
  block: Arrangement,
  at: readonly Mm[],
  size: readonly Mm[],
  take: (kind: Count) => Count,
): CutTree {
  const [axis] = spareAxes(size, block.size, true);
  if (axis !== undefined) {
    const need = block.size[axis]!;
    return {
      kind: "split",
      at,
      size,
      axis,
      near: growTree(block, at, withSize(size, axis, need), take),
      far: {
        kind: "free",
        at: withSize(at, axis, at[axis]! + need),
        size: withSize(size, axis, size[axis]! - need),
        item: -1,
      },
    };
  }
  if (block.first === null || block.second === null) {
    return { kind: "item", at, size, item: take(block.kind) };
  }
  const cut = block.first.size[block.axis]!;
  return {
    kind: "split",
    at,
    size,
    axis: block.axis,
    near: growTree(block.first, at, withSize(size, block.axis, cut), take),
    far: growTree(
      block.second,
      withSize(at, block.axis, at[block.axis]! + cut),
      withSize(size, block.axis, size[block.axis]! - cut),
      take,
    ),
  };
}

/** The first arrangement of a set that fits a piece of stock, or null. */
export const arrangementFor = (
  { fronts }: Arrangements,
  set: Count,
  room: readonly Mm[],
): Arrangement | null => fronts[set]!.find(({ size }) => fitsIn(size, room)) ?? null;
