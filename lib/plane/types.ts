/** Millimetres: the only unit of length inside the program. */
export type Mm = number;
/** Square millimetres. */
export type Mm2 = number;
/** Cubic millimetres. */
export type Mm3 = number;
/** Radians, counter-clockwise positive with y up. */
export type Radians = number;
/** Degrees, only where plan.json or a drawing shows them. */
export type Degrees = number;
/** A plain ratio: 0.03 is three per cent. */
export type Ratio = number;
/** How many. */
export type Count = number;

/** A place in the plane. y points up everywhere but in `drawing/`. */
export type Point = readonly [x: Mm, y: Mm];

export interface Line {
  readonly kind: "line";
  readonly from: Point;
  readonly to: Point;
}

/** Part of a circle, from one end to the other. A full circle is two halves. */
export interface Arc {
  readonly kind: "arc";
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly isClockwise: boolean;
}

export type Segment = Line | Arc;

/** A closed loop: each segment starts where the one before it ends, the last ends at the first. */
export type Loop = readonly Segment[];

/** A flat outline with holes: the outer loop runs counter-clockwise, holes clockwise (y up). */
export interface Shape {
  readonly outer: Loop;
  readonly holes: readonly Loop[];
}

/** Corners in order, counter-clockwise (y up), the first not repeated at the end. */
export type Polygon = readonly Point[];

/** A rigid move of the plane: mirror left to right first (if flipped), then turn, then shift. */
export interface Placement {
  readonly turn: Radians;
  readonly isFlipped: boolean;
  readonly shift: Point;
}

/** The smallest upright rectangle round something. */
export interface Bounds {
  readonly min: Point;
  readonly max: Point;
}
