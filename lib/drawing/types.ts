import type { CutPlan, Lay } from "../packing/types.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import type { Step } from "../steps/types.ts";

/** All that figures are drawn from. A whole plan fits. */
export interface DrawingInput {
  readonly project: Project;
  readonly solids: readonly Solid[];
  readonly covers: readonly Cover[];
  readonly pieces: readonly Piece[];
  readonly lays: readonly Lay[];
  readonly slabs: readonly CutPlan[];
  readonly sheets: readonly CutPlan[];
  readonly boards: readonly CutPlan[];
  readonly steps: readonly Step[];
}

/** The room a figure may take on the paper. */
export interface FigureLimits {
  readonly width: Mm;
  readonly height: Mm;
}

/** Takes real millimetres (y up) to millimetres on the paper (y down). */
export type ToPaper = (point: Point) => Point;

/** One thing on the paper. A mark knows shapes, never projects or pages. */
export type Mark = (toPaper: ToPaper) => readonly Ink[];

/** What a line tells the maker. CSS gives each role its look. */
export type LineRole = "stock" | "cut" | "seam" | "fold" | "measure" | "motion" | "ghost";

// ---- Ink: what lies on the paper, in paper millimetres, before it is written as SVG -------------

export type Ink = PathInk | TextInk;

export interface PathInk {
  readonly kind: "path";
  /** CSS classes, such as `line cut`. */
  readonly className: string;
  readonly paths: readonly PaperPath[];
  /** Whether text may not stand across it. */
  readonly isObstacle: boolean;
}

export interface PaperPath {
  readonly from: Point;
  readonly segments: readonly PaperSegment[];
  readonly isClosed: boolean;
}

export type PaperSegment =
  | { readonly kind: "line"; readonly to: Point }
  | {
      readonly kind: "arc";
      readonly to: Point;
      readonly centre: Point;
      readonly radius: Mm;
      /** Clockwise as seen on the paper. */
      readonly isClockwise: boolean;
    };

/** Sizes and weights of text; `shared/styles/figures.css` must agree (tested). */
export type TextStyle = "label" | "name" | "letter";
export type Anchor = "start" | "middle" | "end";

export interface TextInk {
  readonly kind: "text";
  readonly style: TextStyle;
  readonly text: string;
  /** End or middle of the text, half way up its capitals. */
  readonly at: Point;
  readonly anchor: Anchor;
  /** Reads upwards, turned by a quarter. */
  readonly isUpright: boolean;
  /** Stands on white of its own, such as a ring, and so may lie on lines. */
  readonly isGrounded?: boolean;
  /** Brings its white ground along: lines end short of it. */
  readonly hasHalo?: boolean;
}

/** An upright rectangle on the paper. */
export interface Box {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
}

// ---- Labels ------------------------------------------------------------------------------------

/** Some lines of text that may stand in several places, best first. */
export interface Label {
  readonly lines: readonly string[];
  readonly style: TextStyle;
  readonly candidates: readonly Candidate[];
}

/** One place for a label. `at` is the middle of its box, or of the side its anchor names. */
export interface Candidate {
  readonly at: Point;
  readonly anchor: Anchor;
  /** Line from the label to what it speaks of, end first; null where it stands on the thing. */
  readonly leader: Point | null;
}

export interface Placed {
  readonly inks: readonly Ink[];
  /** Labels for which no clear place was found. */
  readonly collisions: readonly string[];
}

/** A picture before it is framed: ink in any paper coordinates. */
export interface Picture {
  readonly inks: readonly Ink[];
  readonly collisions: readonly string[];
}

/** A finished drawing. */
export interface Figure {
  /** As the author names it: `solid/pad`, `panel/P1`, `lay/leaf-print`, `slab/seat-foam/1`. */
  readonly id: string;
  readonly title: string;
  /** A whole `<svg>` with width, height, viewBox in mm, role, title and desc. */
  readonly svg: string;
  /** The same facts in words. */
  readonly alt: string;
  /** "Scale 1 : 10", or "Not to scale". */
  readonly scale: string;
  readonly width: Mm;
  readonly height: Mm;
  /** Labels that could not be placed clear of others or of the figure's edge; empty when all is well. */
  readonly collisions: readonly string[];
  /** How long the thing itself is drawn, dimensions and words left out; for flat pieces. */
  readonly drawn?: Mm;
}

/** Draws a figure when its turn comes; null where the plan gives it nothing to draw. */
export type Drawer = (limits: FigureLimits) => Figure | null;
