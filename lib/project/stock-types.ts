import type { Count, Mm, Point, Polygon, Ratio } from "../plane/types.ts";

export type Stock = SlabStock | FabricStock | SheetStock | BoardStock | ZipStock | LengthStock;

interface StockBase {
  readonly id: string;
  /** The author's own words for it, or the id with its hyphens opened. */
  readonly label: string;
}

/** The same stock in one more size: sold so, or an old piece that lies about. */
export interface StockSize {
  /** The author's own words for it, null for none. */
  readonly label: string | null;
  /** As many sizes as the kind has: three for a slab, two for a sheet, one for a board. */
  readonly size: readonly Mm[];
  readonly have: Count;
  readonly price: number | null;
  /** False for what only lies on hand, so that no more of it can be bought. */
  readonly isSold: boolean;
  /** Used up before other pieces on hand. */
  readonly isFirst: boolean;
}

/** What slabs, sheets and boards share. */
interface CutStockBase extends StockBase {
  /** Other sizes of the same stock, none where absent. */
  readonly also?: readonly StockSize[];
  /** Smallest side of an offcut worth keeping; our own choice where absent. */
  readonly leastOffcut?: Mm;
}

/** A foam slab. Any block size may lie along the thickness. */
export interface SlabStock extends CutStockBase {
  readonly kind: "slab";
  readonly size: readonly [length: Mm, width: Mm, thickness: Mm];
  readonly have: Count;
  /** kg per cubic metre, null when unknown. */
  readonly density: number | null;
  /** Indentation hardness in newtons as the seller states it, null when unknown. */
  readonly hardness: number | null;
  readonly kerf: Mm;
  /** True for old foam out of other furniture. */
  readonly isReclaimed?: boolean;
  /** Price of one slab, in the author's currency. */
  readonly price: number | null;
}

/** Fibres that `shared/tables/fibres.json` has care for. */
export const fibres = [
  "cotton",
  "linen",
  "hemp",
  "wool",
  "silk",
  "viscose",
  "polyester",
  "nylon",
  "acrylic",
  "polypropylene",
  "vinyl",
  "leather",
] as const;
export type Fibre = (typeof fibres)[number];

export type PrintDirection = "one-way" | "two-way" | "any";

export interface FabricStock extends StockBase {
  readonly kind: "fabric";
  /** Full width, selvedges included. */
  readonly width: Mm;
  /** Width of one selvedge, left out on both sides. */
  readonly selvedge: Mm;
  readonly direction: PrintDirection;
  readonly repeat: { readonly along: Mm; readonly across: Mm } | null;
  /** Length on hand. */
  readonly have: Mm;
  /** Share of length and width lost in the first wash. */
  readonly shrink: Ratio;
  /** Price per metre. */
  readonly price: number | null;
  /** True when both sides are good, so that a piece may be turned over. */
  readonly isTwoFaced: boolean;
  /** Thickness of one layer, null when unknown. */
  readonly thickness: Mm | null;
  /** Grams per square metre, null when unknown. */
  readonly weight?: number | null;
  /** What it is made of, in one word, null when unknown. */
  readonly fibre?: Fibre | null;
  /** Other pieces of the same cloth on hand, none where absent. */
  readonly also?: readonly ClothRemnant[];
  /** Places on the length on hand that no piece may lie on, none where absent. */
  readonly flaws?: readonly ClothFlaw[];
  /** Width of the holes of a mesh; absent for closed cloth. */
  readonly mesh?: Mm;
  /** True when the cloth is laid double, folded along its length, and cut two at a time. */
  readonly isFolded?: boolean;
}

/** One more piece of a cloth on hand: another length of the full width, or a remnant of any shape. */
export interface ClothRemnant {
  readonly label: string | null;
  /** Its outline, the print running towards +y, lowest-left bound at the origin; no selvedge is left out. */
  readonly outline: Polygon;
  /** Whether it has the full width, selvedges included. */
  readonly isFullWidth: boolean;
  readonly flaws: readonly ClothFlaw[];
}

/** A rectangle of spoiled cloth, from the lower left corner of its piece of cloth. */
export interface ClothFlaw {
  readonly at: Point;
  readonly size: readonly [width: Mm, length: Mm];
}

export type Grain = "along" | "across" | "none";

export interface SheetStock extends CutStockBase {
  readonly kind: "sheet";
  readonly size: readonly [length: Mm, width: Mm];
  readonly thickness: Mm;
  readonly kerf: Mm;
  /** Way the grain of the sheet runs; parts keep their first size along it unless "none". */
  readonly grain: Grain;
  /** "free": parts may lie anywhere and are cut out by a jigsaw or a knife; "across" where absent. */
  readonly cutting?: "across" | "free";
  readonly have: Count;
  readonly price: number | null;
}

export interface BoardStock extends CutStockBase {
  readonly kind: "board";
  readonly section: readonly [Mm, Mm];
  readonly length: Mm;
  readonly kerf: Mm;
  readonly have: Count;
  readonly price: number | null;
}

export interface ZipStock extends StockBase {
  readonly kind: "zip";
  /** Lengths sold, ascending. Empty for chain by the metre. */
  readonly lengths: readonly Mm[];
  readonly have: readonly Mm[];
  readonly price: number | null;
}

/** What is bought by length and needs no width: webbing, cord, elastic. Cut with scissors. */
export interface LengthStock extends StockBase {
  readonly kind: "length";
  /** Lengths sold, ascending. Empty for any length off the roll. */
  readonly lengths: readonly Mm[];
  /** Lengths on hand, ascending. */
  readonly have: readonly Mm[];
  /** Price per metre off the roll, else of one length; longer ones in proportion. */
  readonly price: number | null;
}
