import type { Count, Mm } from "../plane/types.ts";
import type { SheetSet } from "./bench-types.ts";

/** Most value to be cut from one sheet, and a figure no plan can pass. */
export interface SheetValue {
  readonly value: number;
  readonly bound: number;
}

/** Blocks built up after which a search with demands gives up. */
const mostBlocks = 60_000;

/**
 * The most value of rectangles cut right across from one sheet, without turning. Any number of each
 * is solved exactly by dynamic programming; with demands, blocks are built up side by side, the most
 * promising first, so that the first complete one no open block can beat is best. Whole sizes only.
 *
 * @source Gilmore and Gomory 1966, "The theory and computation of knapsack functions"; Viswanathan
 * and Bagchi 1993, "Best-first search methods for constrained two-dimensional cutting stock problems"
 */
export function bestSheetValue({ sheet: [length, width], items }: SheetSet): SheetValue {
  const free = freeValues(length, width, items);
  const whole = free[length]![width]!;
  if (items.every(({ demand }) => demand === undefined)) return { value: whole, bound: whole };
  return buildBlocks(length, width, items, restBounds(length, width, free), whole);
}

type Values = readonly Float64Array[];

/** Most value of every rectangle up to the sheet, any number of each item. */
function freeValues(length: Mm, width: Mm, items: SheetSet["items"]): Values {
  const best = Array.from({ length: length + 1 }, () => new Float64Array(width + 1));
  for (const { size, value } of items) {
    if (size[0] > length || size[1] > width) continue;
    best[size[0]]![size[1]] = Math.max(best[size[0]]![size[1]]!, value);
  }
  const cutsX = sums(
    length,
    items.map(({ size }) => size[0]),
  );
  const cutsY = sums(
    width,
    items.map(({ size }) => size[1]),
  );
  for (let x = 1; x <= length; x++) {
    const row = best[x]!;
    const before = best[x - 1]!;
    for (let y = 1; y <= width; y++) {
      let value = Math.max(row[y]!, row[y - 1]!, before[y]!);
      for (const cut of cutsX) {
        if (2 * cut > x) break;
        const both = best[cut]![y]! + best[x - cut]![y]!;
        if (both > value) value = both;
      }
      for (const cut of cutsY) {
        if (2 * cut > y) break;
        const both = row[cut]! + row[y - cut]!;
        if (both > value) value = both;
      }
      row[y] = value;
    }
  }
  return best;
}

/** All sums of sizes up to a limit, ascending: cuts need be tried nowhere else. */
function sums(limit: Mm, sizes: readonly Mm[]): readonly Mm[] {
  const reached = new Uint8Array(limit + 1);
  reached[0] = 1;
  for (let at = 0; at <= limit; at++) {
    if (reached[at] === 0) continue;
    for (const size of sizes) if (at + size <= limit) reached[at + size] = 1;
  }
  return Array.from(reached.keys()).filter((at) => at > 0 && reached[at] === 1);
}

/** For a block in the sheet's corner, the most value the rest of the sheet could still give. */
function restBounds(length: Mm, width: Mm, free: Values): Values {
  const rest = Array.from({ length: length + 1 }, () => new Float64Array(width + 1));
  for (let x = length; x >= 0; x--) {
    for (let y = width; y >= 0; y--) {
      let most = 0;
      for (let to = x + 1; to <= length; to++) {
        most = Math.max(most, rest[to]![y]! + free[to - x]![y]!);
      }
      for (let to = y + 1; to <= width; to++) {
        most = Math.max(most, rest[x]![to]! + free[x]![to - y]!);
      }
      rest[x]![y] = most;
    }
  }
  return rest;
}

interface Block {
  readonly x: Mm;
  readonly y: Mm;
  readonly value: number;
  readonly promise: number;
  readonly counts: readonly Count[];
}

function buildBlocks(
  length: Mm,
  width: Mm,
  items: SheetSet["items"],
  rest: Values,
  bound: number,
): SheetValue {
  const open: Block[] = [];
  const closed: Block[] = [];
  const known = new Map<string, number>();
  let best = 0;
  const add = (x: Mm, y: Mm, value: number, counts: readonly Count[]): void => {
    if (x > length || y > width) return;
    if (counts.some((count, i) => count > (items[i]!.demand ?? Infinity))) return;
    const promise = value + rest[x]![y]!;
    const key = `${x},${y},${counts.join()}`;
    if (promise <= best && value < best) return;
    if (known.has(key)) return;
    known.set(key, value);
    best = Math.max(best, value);
    pushBlock(open, { x, y, value, promise, counts });
  };
  items.forEach(({ size, value }, i) =>
    add(
      size[0],
      size[1],
      value,
      items.map((_, j) => (j === i ? 1 : 0)),
    ),
  );
  while (open.length > 0 && closed.length < mostBlocks) {
    const block = popBlock(open);
    if (block.promise <= best) return { value: best, bound: best };
    closed.push(block);
    for (const other of closed) {
      const counts = block.counts.map((count, i) => count + other.counts[i]!);
      const value = block.value + other.value;
      add(block.x + other.x, Math.max(block.y, other.y), value, counts);
      add(Math.max(block.x, other.x), block.y + other.y, value, counts);
    }
  }
  const left = open.length === 0 ? best : Math.max(best, open[0]!.promise);
  return { value: best, bound: Math.min(bound, left) };
}

/** Add to a heap whose first block promises most. */
function pushBlock(heap: Block[], block: Block): void {
  let at = heap.push(block) - 1;
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (heap[above]!.promise >= block.promise) break;
    heap[at] = heap[above]!;
    at = above;
  }
  heap[at] = block;
}

function popBlock(heap: Block[]): Block {
  const top = heap[0]!;
  const last = heap.pop()!;
  if (heap.length === 0) return top;
  let at = 0;
  for (;;) {
    let below = 2 * at + 1;
    if (below >= heap.length) break;
    if (below + 1 < heap.length && heap[below + 1]!.promise > heap[below]!.promise) below += 1;
    if (heap[below]!.promise <= last.promise) break;
    heap[at] = heap[below]!;
    at = below;
  }
  heap[at] = last;
  return top;
}
