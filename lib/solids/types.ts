import type { Count, Loop, Mm, Mm2, Mm3, Point, Radians, Shape } from "../plane/types.ts";

/** x left to right, y front to back, z up. */
export type Point3 = readonly [x: Mm, y: Mm, z: Mm];
/** A direction of length one. */
export type Direction = readonly [x: number, y: number, z: number];

/** Where a flat face lies in space; each kind says how a flat point is lifted back (see `lift-point.ts`). */
export type Surface = PlaneSurface | CylinderSurface | ConeSurface;

/** Flat (u, v) lies at `origin + u·across + v·rise`. `across × rise` is the outward normal. */
export interface PlaneSurface {
  readonly kind: "plane";
  readonly origin: Point3;
  readonly across: Direction;
  readonly rise: Direction;
}

/**
 * Flat (u, v): u is the length round the outside from `zero`, v the height along `axis` from `centre`.
 * Seen from outside, u runs to the right when `axis` points up.
 */
export interface CylinderSurface {
  readonly kind: "cylinder";
  readonly centre: Point3;
  readonly axis: Direction;
  /** From the axis towards u = 0. */
  readonly zero: Direction;
  readonly radius: Mm;
}

/**
 * A cone seen flat as a sector round its tip: flat polar radius is the distance from the tip, flat
 * polar angle is (angle round the axis) × sine of the half angle, measured from the downward v axis
 * when the cone narrows upwards and from the upward one when it narrows downwards.
 */
export interface ConeSurface {
  readonly kind: "cone";
  readonly tip: Point3;
  /** From the tip into the cone. */
  readonly axis: Direction;
  readonly zero: Direction;
  readonly halfAngle: Radians;
}

export interface Solid {
  readonly id: string;
  /** Length, depth and height of the box round it. */
  readonly size: Point3;
  readonly min: Point3;
  readonly volume: Mm3;
  readonly area: Mm2;
  /** Kilograms; null when a density is missing. */
  readonly mass: number | null;
  readonly centreOfMass: Point3;
  readonly blocks: readonly SolidBlock[];
  readonly joints: readonly Joint[];
  readonly faces: readonly Face[];
  readonly edges: readonly SolidEdge[];
  readonly mesh: SolidMesh;
  /** Groups of blocks that hold together by faces; more than one means the thing falls apart. */
  readonly parts: readonly (readonly string[])[];
}

export interface SolidBlock {
  readonly id: string;
  /** Size of the box round it. */
  readonly size: Point3;
  readonly min: Point3;
  /** Volume as cut, before what other blocks take from it. */
  readonly volume: Mm3;
  readonly foam: string | null;
  /** Share of its volume that lies inside earlier blocks. */
  readonly buried: number;
  readonly mesh: SolidMesh;
}

/** Two blocks glued together. */
export interface Joint {
  readonly blocks: readonly [string, string];
  readonly area: Mm2;
  /** Outlines of the glued area in space, for drawing. */
  readonly outlines: readonly (readonly Point3[])[];
}

/** One outside face. Its flat shape has true lengths, seen from outside. */
export interface Face {
  readonly id: string;
  /** Every `<block>/<side>` it answers to. */
  readonly names: readonly string[];
  /** In plain words: "left side". */
  readonly label: string;
  readonly surface: Surface;
  readonly area: Mm2;
  /** Outward; for a curved face the mean direction, or zeros when it goes all round. */
  readonly normal: Point3;
  /** Direction in space that the print should run on it. */
  readonly up: Direction;
  /** The same direction in the flat, as an angle from the flat +x axis. */
  readonly upAngle: Radians;
  readonly shape: Shape;
  /** The same loops as `shape`, outer first, each piece with the edge it belongs to. */
  readonly loops: readonly (readonly FaceSide[])[];
  readonly isCurved: boolean;
  /** False for an underside that rests on the floor. */
  readonly isVisible: boolean;
}

/** One stretch of a face's boundary. */
export interface FaceSide {
  readonly face: string;
  readonly edge: string;
  /** Flat segments in order along the loop; more than one only on free curves. */
  readonly segments: Loop;
  readonly length: Mm;
  /** True when it runs along the edge's own direction. */
  readonly isForward: boolean;
}

export type Bend = "convex" | "inward";

/** Where two faces meet; `faces` are equal where a closed curved face is slit to lie flat. */
export interface SolidEdge {
  readonly id: string;
  readonly faces: readonly [string, string];
  readonly length: Mm;
  readonly bend: Bend;
  /** Angle between the two outward normals: 0 where the surface runs on smoothly. */
  readonly turn: Radians;
  /** Straight in space, and so able to be a fold. */
  readonly isStraight: boolean;
  /** The edge in space in its own direction; closed when first and last agree. */
  readonly path: readonly Point3[];
}

/** Triangles for drawing: corners counter-clockwise seen from outside. */
export interface SolidMesh {
  readonly points: readonly Point3[];
  readonly triangles: readonly (readonly [Count, Count, Count])[];
  /** For each triangle the id of its face (or `<block>/<side>` on a single block). */
  readonly faces: readonly string[];
}

/** A flat point of a face and where it lies. */
export interface Lifted {
  readonly flat: Point;
  readonly space: Point3;
}
