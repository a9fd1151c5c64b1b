import type { Mm, Mm2, Placement, Point, Radians, Shape } from "../plane/types.ts";
import type { Bend, FaceSide } from "../solids/types.ts";
import type { PanelRule } from "../project/types.ts";

/** Faces laid flat together: right side up, y up, up arrow along +y, before any allowance. */
export interface Panel {
  /** Short and stable: `P1`, `P2` … in order of the first face. */
  readonly id: string;
  readonly label: string;
  readonly faces: readonly PanelFace[];
  readonly shape: Shape;
  /** The loops of `shape` (outer first) as stretches that belong to edges of the solid. */
  readonly loops: readonly (readonly PanelSide[])[];
  readonly folds: readonly Fold[];
  readonly area: Mm2;
  readonly size: readonly [width: Mm, height: Mm];
  /** The panel this one is the mirror image of, named once for each pair. */
  readonly mirrorOf: string | null;
  /** A panel of the same shape and the same way up, named by the later of the two. */
  readonly sameAs: string | null;
}

export interface PanelFace {
  readonly face: string;
  /** Takes the face's own flat coordinates to the panel's. Never flipped. */
  readonly placement: Placement;
  /** How far the face's up stands turned from the panel's +y, counter-clockwise. */
  readonly turn: Radians;
}

/** A stretch of a panel's outline along one edge of the solid, in panel coordinates. */
export interface PanelSide extends FaceSide {
  readonly panel: string;
}

export interface Fold {
  readonly edge: string;
  readonly faces: readonly [string, string];
  readonly from: Point;
  readonly to: Point;
  readonly bend: Bend;
  readonly turn: Radians;
}

/** One way to cut the cover, with the figures it is compared by. */
export interface Way {
  readonly id: string;
  /** Rule that asked for it, or "named" for the author's own list. */
  readonly rule: PanelRule | "named";
  readonly panels: readonly Panel[];
  readonly seamLength: Mm;
  /** Visible faces with the print sideways or upside down. */
  readonly turnedFaces: readonly string[];
  readonly inwardFolds: number;
  readonly inwardSeams: number;
  /** In plain words why it came out like this. */
  readonly reasons: readonly string[];
}

/** Whether the panels fold back to the solid, worked out by another route than the unfolding. */
export interface RefoldProof {
  readonly ok: boolean;
  /** Largest gap found between a folded corner and the solid, in mm. */
  readonly worst: Mm;
}
