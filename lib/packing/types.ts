import type { Count, Degrees, Mm, Polygon, Ratio } from "../plane/types.ts";

/**
 * Pieces laid on one cloth. x runs across the width from the left selvedge, y along the length; the
 * print runs towards +y. Nothing lies on a selvedge.
 */
export interface Lay {
  readonly stock: string;
  /** Full width of the cloth, selvedges included. */
  readonly width: Mm;
  readonly selvedge: Mm;
  /** Length the pieces take. */
  readonly length: Mm;
  /** Length to ask for in the shop: what is missing, rounded up the way shops sell. 0 when enough is on hand. */
  readonly buy: Mm;
  readonly have: Mm;
  readonly short: Mm;
  /** Area of pieces ÷ (usable width × length). */
  readonly yield: Ratio;
  /** No lay can be shorter than this. */
  readonly lowerBound: Mm;
  readonly copies: Count;
  /** Length n separate lays would take, for a class set; equals `length` when copies is 1. */
  readonly separately: Mm;
  readonly places: readonly LayPlace[];
  /** Length that centring and matching the print add; left out where nothing is centred or matched. */
  readonly printExtra?: Mm;
  /** Pieces wider than the cloth: nothing was placed for them. */
  readonly unplaced: readonly string[];
  /** The pieces of cloth it lies on, where they are several; remnants lie beyond `length`. */
  readonly sections?: readonly LaySection[];
  /** Pieces wider than the cloth that are laid in parts, to be joined by seams. */
  readonly splits?: readonly PieceSplit[];
  /** Length up to which the cloth is folded along its middle and cut double; absent for a single lay. */
  readonly folded?: Mm;
}

/** One piece of cloth of a lay. */
export interface LaySection {
  /** "length" on hand, "remnant" of any shape, or what is "bought". */
  readonly kind: "length" | "remnant" | "bought";
  readonly label: string | null;
  /** Where it starts along the lay. */
  readonly start: Mm;
  readonly length: Mm;
  /** As it lies in the lay. */
  readonly outline: Polygon;
  readonly flaws: readonly Polygon[];
}

/** A piece laid in parts. */
export interface PieceSplit {
  readonly piece: string;
  /** What its parts are called in `places`. */
  readonly parts: readonly string[];
  /** Where the seams are, from the left edge of its cut line. */
  readonly at: readonly Mm[];
  /** Added to both parts along each seam. */
  readonly allowance: Mm;
}

export interface LayPlace {
  readonly piece: string;
  readonly copy: Count;
  /** Lowest-left corner of the placed outline's bounds. */
  readonly x: Mm;
  readonly y: Mm;
  /** Counter-clockwise turn from the piece's own outline. */
  readonly turn: Degrees;
  readonly flipped: boolean;
  readonly outline: Polygon;
}

/** A part to be cut from slabs, sheets or boards. Slabs use three sizes, sheets two, boards one. */
export interface Part {
  readonly id: string;
  readonly label: string;
  readonly copies: Count;
  readonly size: readonly Mm[];
  /** Free outline of a sheet part, null for a rectangle. */
  readonly outline: Polygon | null;
  /** Holes in it, lowest-left bound of the part at the origin. */
  readonly holes?: readonly Polygon[];
  /** Whether it may be turned by a quarter: false where grain matters. */
  readonly canTurn: boolean;
  /** Another part of the same blank, or its own next copy, which one cut aslant divides between them. */
  readonly twin?: string;
  /** Its last blank gives one more than is wanted. */
  readonly leavesSpare?: boolean;
}

/** One result shape for slabs, sheets and boards. */
export interface CutPlan {
  readonly stock: string;
  readonly kind: "slab" | "sheet" | "board" | "length";
  readonly used: readonly UsedStock[];
  readonly needed: Count;
  readonly have: Count;
  /** No plan can use fewer than this. */
  readonly lowerBound: Count;
  /** What cannot be cut at all, and the nearest change that would help. */
  readonly short: readonly Shortfall[];
  /** Content of the parts ÷ content of all stock that is cut. */
  readonly yield?: Ratio;
  /** Pieces of stock that one set after another would take, for a class set. */
  readonly separately?: Count;
  /** What each size of the stock gives, where it comes in several. */
  readonly sizes?: readonly SizeUse[];
  /** What is bought, and the least that any plan must buy, where there are several sizes. */
  readonly buys?: BuyBound;
}

/** One size of a stock in a plan. */
export interface SizeUse {
  readonly label: string | null;
  readonly size: readonly Mm[];
  readonly have: Count;
  readonly used: Count;
  readonly buy: Count;
  readonly price: number | null;
}

/** In money, or in length, area or volume of stock where not every size has a price. */
export interface BuyBound {
  readonly unit: "price" | "content";
  readonly cost: number;
  readonly bound: number;
  /** Pieces of stock, of all sizes together, that no plan can use fewer of. */
  readonly pieces: Count;
}

export interface Shortfall {
  readonly part: string;
  readonly reason: string;
  readonly remedy: string;
}

export interface UsedStock {
  readonly stockIndex: Count;
  readonly size: readonly Mm[];
  readonly places: readonly CutPlace[];
  readonly cuts: readonly Cut[];
  readonly offcuts: readonly Offcut[];
}

export interface CutPlace {
  readonly part: string;
  readonly copy: Count;
  /** Lowest corner on the stock; as many figures as the stock has sizes. */
  readonly at: readonly Mm[];
  /** Size as it lies. */
  readonly size: readonly Mm[];
  /** Layer this is of a laminated or glued-up block, and of how many; 1 of 1 for a whole block. */
  readonly layer: readonly [Count, Count];
  readonly outline: Polygon | null;
  /** Holes where they lie. */
  readonly holes?: readonly Polygon[];
  /** Another part, or its own next copy, that comes from the same blank by one cut aslant. */
  readonly twin?: string;
  /** The part in whose hole it lies: it is cut from what falls out there. */
  readonly inHoleOf?: string;
  /** The second of the two is more than is wanted. */
  readonly hasSpare?: boolean;
}

/** One cut, right across the piece it divides. */
export interface Cut {
  readonly order: Count;
  /** rip: along the length. cross: across it. slice: to thickness. free: round an outline or a hole. */
  readonly kind: "rip" | "cross" | "slice" | "free";
  /** Axis index the cut is at right angles to: 0 length, 1 width, 2 thickness. */
  readonly axis: Count;
  /** Measured from the lowest corner of the stock. */
  readonly at: Mm;
  /** The piece it divides: lowest corner and size. */
  readonly of: { readonly at: readonly Mm[]; readonly size: readonly Mm[] };
}

export interface Offcut {
  readonly at: readonly Mm[];
  readonly size: readonly Mm[];
  /** What it could still become in this project, or null. */
  readonly use: string | null;
}
