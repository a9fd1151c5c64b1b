import type { Count, Mm, Polygon } from "../plane/types.ts";

/**
 * A block to cut right across from stock, in as many sizes as the stock has: three for slabs, two
 * for sheets, one for boards. All sizes of a job, the stock's too, have one kerf added: then blocks
 * may lie side by side without thinking of the kerf again.
 */
export interface CutItem {
  readonly part: string;
  readonly label: string;
  readonly copy: Count;
  readonly layer: readonly [Count, Count];
  readonly outline: Polygon | null;
  /** Holes, with the sizes of the part as it stands before it is turned. */
  readonly holes?: readonly Polygon[];
  readonly own?: readonly Mm[];
  /** Another part of the same blank. */
  readonly twin?: string;
  readonly hasSpare?: boolean;
  /** The sizes it may lie in. */
  readonly ways: readonly (readonly Mm[])[];
}

/** One kind of stock: `have` pieces of it on hand, any number to buy at `cost` each. */
export interface CutStock {
  readonly size: readonly Mm[];
  readonly have: Count;
  readonly cost: number;
  /** False for old pieces on hand of which no more can be bought. */
  readonly isSold?: boolean;
  /** Used up before other stock on hand. */
  readonly isFirst?: boolean;
}

/** Whether more of a kind of stock can be bought. */
export const isSold = (stock: CutStock): boolean => stock.isSold !== false;

export interface CutJob {
  readonly items: readonly CutItem[];
  readonly stocks: readonly CutStock[];
  readonly kerf: Mm;
}

/** Stock divided by right-across cuts until every piece is an item or free. */
export type CutTree = CutLeaf | CutSplit;

export interface CutLeaf {
  readonly kind: "item" | "free";
  readonly at: readonly Mm[];
  readonly size: readonly Mm[];
  /** Place of the item in the job, −1 for a free piece. */
  readonly item: Count;
}

export interface CutSplit {
  readonly kind: "split";
  readonly at: readonly Mm[];
  readonly size: readonly Mm[];
  readonly axis: Count;
  /** The piece nearer the lowest corner, then the other. */
  readonly near: CutTree;
  readonly far: CutTree;
}

/** One piece of stock cut up. */
export interface CutBin {
  /** Place of its kind in the job's list of stocks. */
  readonly stock: Count;
  readonly isBought: boolean;
  readonly tree: CutTree;
}

/** Sizes nearer than this are equal: a thousandth of a millimetre. */
export const sameSize: Mm = 1e-3;

/** Product of all sizes: length, area or volume. */
export const content = (size: readonly Mm[]): number => size.reduce((all, each) => all * each, 1);

/** Whether a block of one size can be cut from a piece of another. */
export const fitsIn = (size: readonly Mm[], room: readonly Mm[]): boolean =>
  size.every((each, axis) => each <= room[axis]! + sameSize);

/** Whether a kind of stock is large enough for an item at all. */
export const holdsItem = (stock: CutStock, item: CutItem): boolean =>
  item.ways.some((way) => fitsIn(way, stock.size));
