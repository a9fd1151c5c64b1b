import type { Count, Mm, Mm2, Point, Ratio, Shape } from "../plane/types.ts";
import type { Unit } from "../units/types.ts";
import type { PieceSide } from "./facing-side.ts";
import type { Stock } from "./stock-types.ts";

export type { Unit };
export type * from "./stock-types.ts";

/** A fault in a project file that its author can mend. `field` is a dotted path in the front matter. */
export interface Fault {
  readonly field: string;
  readonly fault: string;
  readonly fix: string;
}

/** A project file as it lies on disk, already read. */
export interface SourceFile {
  /** Path as the author knows it, such as `content/seat.md`. */
  readonly file: string;
  readonly text: string;
}

/** A checked project: every length in mm, every formula worked out, every name known. */
export interface Project {
  readonly slug: string;
  /** Path of the source as the author knows it, such as `content/seat.md`. */
  readonly file: string;
  readonly title: string;
  readonly units: Unit;
  /** Step that inches are rounded to when printed: 1/8 by default. */
  readonly round: Ratio;
  readonly summary: string | null;
  readonly audience: Audience | null;
  readonly country: string | null;
  readonly time: string | null;
  readonly skill: string | null;
  readonly version: string | null;
  readonly author: string | null;
  readonly language: string;
  readonly dimensions: Readonly<Record<string, Mm>>;
  readonly stock: readonly Stock[];
  readonly solids: readonly SolidSpec[];
  readonly pieces: readonly PieceSpec[];
  readonly buy: readonly BuyLine[];
  readonly copies: Count;
  /** Made by a class, which wants a template for its risk assessment. */
  readonly isForClass?: boolean;
  /** Name of the variant this project was built from, null for the file itself. */
  readonly variant: string | null;
  readonly licence: string | null;
  readonly made: AsBuilt | null;
  readonly words: readonly TextPart[];
  /** Line in the source file of each dotted field, for faults found later. */
  readonly lines: Readonly<Record<string, Count>>;
}

export type Audience =
  | { readonly kind: "age"; readonly years: number }
  | { readonly kind: "stature"; readonly stature: Mm }
  | { readonly kind: "adult" };

export interface AsBuilt {
  readonly date: string | null;
  readonly notes: string | null;
  readonly measured: Readonly<Record<string, Mm>>;
  readonly photo: string | null;
}

export interface BuyLine {
  readonly item: string;
  /** 0 where it follows from `use` and `covers`. */
  readonly quantity: number;
  readonly unit: string | null;
  readonly have: number;
  readonly price: number | null;
  /** What it is spread on, where its quantity follows from an area. */
  readonly use?: "adhesive" | "finish" | null;
  /** Area one of them covers by its label, null when the author gave none. */
  readonly covers?: Mm2 | null;
}

// ---- Solids ------------------------------------------------------------------------------

export type Axis = "x" | "y" | "z";
/** x left to right, y front to back, z up; origin at front left bottom. */
export type Place = readonly [x: Mm, y: Mm, z: Mm];

export interface SolidSpec {
  readonly id: string;
  /** Slab stock the blocks are cut from, null for a form without foam. */
  readonly foam: string | null;
  readonly blocks: readonly BlockSpec[];
  readonly cover: CoverSpec | null;
  /** The solid that this one, a loose pad, holds the cloth down on. */
  readonly padOf?: string;
}

interface BlockBase {
  readonly id: string;
  readonly at: Place;
  /** Slab stock of this block; the solid's own where null. */
  readonly foam: string | null;
}

export type BlockSpec =
  BoxBlock | PrismBlock | WedgeBlock | CylinderBlock | RoundedBlock | FrustumBlock;

export interface BoxBlock extends BlockBase {
  readonly kind: "box";
  readonly size: Place;
}

/** The outline lies in the two axes that are not `along`, in order x, y, z. */
export interface PrismBlock extends BlockBase {
  readonly kind: "prism";
  readonly outline: readonly Point[];
  readonly height: Mm;
  readonly along: Axis;
}

/** Full height at the side it rises to, nothing at the opposite side. */
export interface WedgeBlock extends BlockBase {
  readonly kind: "wedge";
  readonly size: Place;
  readonly rises: "back" | "front" | "left" | "right";
}

/** `at` is the lowest corner of the box round it. */
export interface CylinderBlock extends BlockBase {
  readonly kind: "cylinder";
  readonly diameter: Mm;
  readonly length: Mm;
  readonly along: Axis;
}

/** A corner of the outline, called as if the block were drawn upwards. */
export type RoundedCorner = "front-left" | "front-right" | "back-right" | "back-left";

/** A box with some corners rounded of the outline that is drawn along an axis. */
export interface RoundedBlock extends BlockBase {
  readonly kind: "rounded";
  readonly size: Place;
  readonly radius: Mm;
  readonly along: Axis;
  readonly corners: readonly RoundedCorner[];
}

/** Upright; `base` and `top` are diameters, `at` the lowest corner of the box round it. A top of 0 is a cone. */
export interface FrustumBlock extends BlockBase {
  readonly kind: "frustum";
  readonly base: Mm;
  readonly top: Mm;
  readonly height: Mm;
}

// ---- Covers ------------------------------------------------------------------------------

export interface CoverSpec {
  readonly fabric: string;
  readonly seamAllowance: Mm;
  /** Allowances of other edges than seams; null or left out where they have the seam allowance. */
  readonly allowances?: { readonly zip: Mm | null; readonly opening: Mm | null };
  /** Faces the motif is centred on, and pairs of faces the print runs on across. */
  readonly print?: PrintSpec;
  /** Millimetres by which the cover is larger than the foam along x, y, z: negative when smaller. */
  readonly ease: Place;
  readonly panels: PanelRule | readonly NamedPanel[];
  /** Null lets the program propose the opening. */
  readonly open: readonly OpenSeam[] | null;
  /** Face or block/side of the hinge edge's other side, null for the longest edge. */
  readonly hinge: string | null;
  readonly closing: ClosingSpec;
  readonly piping: {
    readonly cord: Mm;
    readonly along: readonly string[];
    readonly cut: "bias" | "straight";
    /** Length stock the cord is cut from; bought by the metre where absent. */
    readonly stock?: string;
  } | null;
  readonly attach: readonly Attachment[];
  /** Face names whose print the author turned: the name of a face and the direction of its up. */
  readonly up: Readonly<Record<string, UpDirection>>;
  readonly anchor: "pad" | "tacks" | "seam" | null;
  /** How raw edges are kept from fraying; left raw where absent. */
  readonly neaten?: "zigzag" | "overedge";
}

export type UpDirection = "up" | "down" | "front" | "back" | "left" | "right";
export type PanelRule = "auto" | "fewest" | "least-cloth" | "upright" | "plain";

export interface NamedPanel {
  readonly name: string;
  /** Face names, `<block>/<side>`. */
  readonly faces: readonly string[];
}

export type OpenSeam =
  | { readonly kind: "face"; readonly face: string }
  | {
      readonly kind: "between";
      readonly faces: readonly [string, string];
      /** How much of the seam stays open, in its middle; all of it where left out. */
      readonly length?: Mm;
    };

export interface ClosingSpec {
  readonly kind: "zip" | "hook-and-loop" | "ties" | "hand-sewn";
  readonly stock: string | null;
  /** A strip that is cut in two along its middle to take the closing. */
  readonly across?: string | null;
}

export interface PrintSpec {
  readonly centre: readonly string[];
  readonly match: readonly (readonly [string, string])[];
}

export interface Attachment {
  readonly id: string;
  readonly piece: string;
  readonly on: string;
  /** From the lower left corner of the face, seen from outside. "centre" is half way. */
  readonly at: readonly [Mm | "centre", Mm | "centre"];
}

// ---- Loose pieces ------------------------------------------------------------------------

export interface PieceSpec {
  readonly id: string;
  readonly label: string;
  readonly stock: string;
  /** Finished outline, lowest-left corner at the origin; a board piece is length by section width. */
  readonly outline: Shape;
  readonly size: readonly [Mm, Mm];
  readonly cut: Count;
  readonly seamAllowance: Mm;
  /** What is turned in at sides where it differs from `seamAllowance`. */
  readonly hem?: Readonly<Partial<Record<PieceSide, Mm>>>;
  /** Whether the print must stand upright on it. */
  readonly up: "up" | "none";
  /** Where the piece stands in the finished thing, for drawings of a project without a solid. */
  readonly at: Place | null;
  /** Where the other copies stand, in order; empty where the author placed only one. */
  readonly others?: readonly Place[];
  readonly along: Axis | null;
  /** Direction the flat of the piece faces; the axis its thickness runs along. */
  readonly thin: Axis | null;
}

// ---- The author's text -------------------------------------------------------------------

/** A stretch of the author's Markdown, already cut up at figures and boxes. */
export type TextPart =
  | { readonly kind: "prose"; readonly markdown: string; readonly line: Count }
  | {
      readonly kind: "figure";
      readonly figure: string;
      readonly caption: string;
      readonly line: Count;
    }
  | { readonly kind: "caution" | "tip"; readonly markdown: string; readonly line: Count }
  | {
      readonly kind: "step";
      readonly step: string;
      readonly markdown: string;
      readonly line: Count;
    }
  | {
      readonly kind: "before";
      readonly step: string;
      readonly title: string;
      readonly markdown: string;
      readonly line: Count;
    };
