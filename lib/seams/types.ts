import type {
  Count,
  Loop,
  Mm,
  Mm2,
  Point,
  Polygon,
  Radians,
  Ratio,
  Shape,
} from "../plane/types.ts";
import type { PrintDirection } from "../project/types.ts";
import type { Panel, RefoldProof, Way } from "../panels/types.ts";
import type { EdgePart } from "../solids/part-edge.ts";

/** Everything about one cover: how it is cut, sewn, opened and closed. */
export interface Cover {
  readonly solid: string;
  readonly fabric: string;
  readonly seamAllowance: Mm;
  readonly ways: readonly ComparedWay[];
  /** Panels of the chosen way, fitted to the foam. */
  readonly panels: readonly Panel[];
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  /** The order of sewing, one entry for each time the needle goes down. */
  readonly passes: readonly SewingPass[];
  /** Handles, loops and labels, and when they are sewn on. */
  readonly attached: readonly SewnOn[];
  readonly sewable: SewingProof;
  readonly opening: Opening | null;
  readonly closing: Closing | null;
  readonly refolds: RefoldProof;
  /** Sizes along x, y, z of the foam and of the cover. */
  readonly foamSize: readonly [Mm, Mm, Mm];
  readonly coverSize: readonly [Mm, Mm, Mm];
  /** Each panel as it would be on the bare foam. */
  readonly foamPanels: readonly FoamPanel[];
  /** Room that each block has in the cover, along x, y, z. */
  readonly blockRoom: readonly BlockRoom[];
  /** What the author asked for and this cover cannot show. */
  readonly lost: readonly LostChoice[];
}

/** What a panel measures before it is fitted. */
export interface FoamPanel {
  readonly panel: string;
  readonly size: readonly [Mm, Mm] | null;
}

export interface BlockRoom {
  readonly block: string;
  readonly size: readonly [Mm, Mm, Mm];
}

/** A choice of the author that came to nothing, and why. */
export interface LostChoice {
  /** Dotted path below the cover. */
  readonly field: string;
  readonly message: string;
  readonly remedy: string;
}

export interface ComparedWay extends Way {
  readonly isChosen: boolean;
  /** Length of cloth its lay takes; null until it has been laid. */
  readonly clothLength: Mm | null;
}

/** A flat piece of cloth ready to be cut: a panel with its allowances, or a loose piece. */
export interface Piece {
  readonly id: string;
  readonly label: string;
  /** Panel it was made of, null for a loose piece or strip. */
  readonly panel: string | null;
  readonly stock: string;
  readonly cut: Count;
  /** Seam line. */
  readonly finished: Shape;
  /** Cut line, shrink allowance included. */
  readonly outline: Shape;
  readonly area: Mm2;
  readonly cutSize: readonly [Mm, Mm];
  /** The seam letters and allowances along the outline, in order. */
  readonly edges: readonly PieceEdge[];
  readonly notches: readonly Notch[];
  readonly clips: readonly Clip[];
  /** Where loose pieces are sewn on: a point and what goes there. */
  readonly marks: readonly Mark[];
  readonly mirrorOf: string | null;
  /** Point in the plane of `outline` that lies where a repeat of the print starts; free if left out. */
  readonly printOrigin?: Point;
  /** True when the print must stand upright on it, so that it may not be turned on the cloth. */
  readonly isUpright: boolean;
}

export interface PieceEdge {
  readonly seam: string | null;
  /** Segments of the seam line. */
  readonly segments: Loop;
  readonly length: Mm;
  readonly allowance: Mm;
  readonly kind: "seam" | "opening" | "closing" | "hem";
}

/** A mark across the allowance that meets its twin on the other panel. */
export interface Notch {
  readonly at: Point;
  /** Outward, away from the piece. */
  readonly towards: Radians;
  readonly seam: string;
  /** Twins share a number. */
  readonly number: Count;
  /** The one piece it is for, where a pattern serves several. */
  readonly on?: string;
}

/** Cut from the edge to within a thread of the seam line at an inward corner. */
export interface Clip {
  readonly from: Point;
  readonly to: Point;
}

/** A place on the right side where something is sewn on. */
export interface Mark {
  readonly at: Point;
  readonly label: string;
  /** The middle of what is sewn on, or one of its two ends. */
  readonly kind: "middle" | "end";
}

export interface Seam {
  /** Letters: A, B, … Z, AA. */
  readonly id: string;
  readonly panels: readonly [string, string];
  readonly edges: readonly string[];
  readonly length: readonly [onFirst: Mm, onSecond: Mm];
  /** 1 is sewn first. Seams left open come last. */
  readonly order: Count;
  readonly state: "sewn" | "closing" | "open";
  readonly corners: readonly SeamCorner[];
  /** True when the two ends meet. */
  readonly isRing: boolean;
  readonly isPiped: boolean;
  /** What the joined panels are called from here on. */
  readonly makes: string;
}

/** Seams sewn in one go, from one start to one stop. */
export interface SewingPass {
  readonly number: Count;
  /** In the order the needle meets them. */
  readonly seams: readonly string[];
  /** Edges of the solid in the same order, from the start. */
  readonly edges: readonly string[];
  readonly state: "sewn" | "closing";
  readonly isRing: boolean;
  /** Where to stop with the needle down and turn, measured from the start. */
  readonly corners: readonly SeamCorner[];
  readonly length: Mm;
  /** What is laid together, by name; the same twice where the work is sewn to itself. */
  readonly joins: readonly [string, string];
  /** What the work is called from here on. */
  readonly makes: string;
  /** Panels that hang together from here on. */
  readonly panels: readonly string[];
}

/** A loose piece that is sewn on to the cover. */
export interface SewnOn {
  /** Name of the attachment. */
  readonly id: string;
  /** Panels it lies on: two where it runs across a seam. */
  readonly panels: readonly string[];
  /** Number of the pass it follows; 0 where its panel is still by itself. */
  readonly after: Count;
}

/** Whether the order was replayed with every seam in reach, and what stood in the way. */
export interface SewingProof {
  readonly ok: boolean;
  readonly faults: readonly string[];
}

/** A place along a seam where one panel's edge turns: pivot there, clip the other panel. */
export interface SeamCorner {
  readonly along: Mm;
  readonly clip: string | null;
  readonly turn: Radians;
}

export interface Opening {
  readonly seams: readonly string[];
  readonly edges: readonly string[];
  /** Length of seam left open. */
  readonly run: Mm;
  /** Widest girth the opening spans. */
  readonly girth: Mm;
  /** Smallest girth the foam presents. */
  readonly needed: Mm;
  /** Share by which the foam must be squeezed; 0 when it slips in. */
  readonly give: Ratio;
  readonly fits: boolean;
  readonly isProposed: boolean;
  readonly reason: string;
  /** What would let the foam in where the author's seams do not; null where nothing is amiss or nothing helps. */
  readonly wayOut: WayOut | null;
  /** Where seams are parted into open and sewn stretches, one cut after another; none where whole seams are open. */
  readonly parts: readonly EdgePart[];
}

/** Seams to leave open as well, or in place of those the author left open; or more of the same seam. */
export interface WayOut {
  readonly kind: "also" | "instead" | "longer";
  /** The two faces of each seam. */
  readonly pairs: readonly (readonly [string, string])[];
  readonly run: Mm;
  readonly girth: Mm;
}

export interface Closing {
  readonly kind: "zip" | "hook-and-loop" | "ties" | "hand-sewn";
  readonly stock: string | null;
  readonly run: Mm;
  /** Length to buy; 0 when nothing is needed. */
  readonly buy: Mm;
  /** The best on hand, 0 when none. */
  readonly have: Mm;
  readonly short: Mm;
  readonly basis: string;
}

/** What a lay needs to know of a piece. */
export interface LayPiece {
  readonly id: string;
  readonly label: string;
  readonly copies: Count;
  /** Cut line, lowest-left corner at the origin, arcs flattened outward. */
  readonly outline: Polygon;
  /** Needs to stand upright under a one-way print. */
  readonly isUpright: boolean;
  /** Allowance for a seam across it, should it be wider than the cloth. */
  readonly joinAllowance?: Mm;
  /** The piece it is the mirror image of. */
  readonly mirrorOf?: string | null;
  /** A point of the outline's plane that must lie where a repeat starts; free where left out. */
  readonly printOrigin?: Point;
}

export interface LayRules {
  readonly direction: PrintDirection;
  readonly canFlip: boolean;
}
