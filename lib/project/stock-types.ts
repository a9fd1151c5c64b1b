import type { Count, Mm, Ratio } from "../plane/types.ts";

export type Stock = SlabStock | FabricStock | SheetStock | BoardStock | ZipStock;

interface StockBase {
  readonly id: string;
  /** The author's own words for it, or the id with its hyphens opened. */
  readonly label: string;
}

/** A foam slab. Any block size may lie along the thickness. */
export interface SlabStock extends StockBase {
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
}

export type Grain = "along" | "across" | "none";

export interface SheetStock extends StockBase {
  readonly kind: "sheet";
  readonly size: readonly [length: Mm, width: Mm];
  readonly thickness: Mm;
  readonly kerf: Mm;
  /** Way the grain of the sheet runs; parts keep their first size along it unless "none". */
  readonly grain: Grain;
  readonly have: Count;
  readonly price: number | null;
}

export interface BoardStock extends StockBase {
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
