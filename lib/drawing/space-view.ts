import type { Degrees, Point, Ratio } from "../plane/types.ts";
import type { Point3 } from "../solids/types.ts";

/** A parallel projection. `across` and `up` span the paper, `towards` points to the viewer. */
export interface SpaceView {
  readonly across: Point3;
  readonly up: Point3;
  readonly towards: Point3;
  readonly scale: Ratio;
}

/**
 * Look at a thing from the front, turned to see `azimuth` degrees of its right side, from
 * `elevation` degrees above. 180 + azimuth looks from behind; a negative elevation from below.
 *
 * @source ISO 5456-3, axonometric representations (orthogonal, free angles)
 */
export function spaceView(azimuth: Degrees, elevation: Degrees, scale: Ratio = 1): SpaceView {
  const [a, e] = [(azimuth * Math.PI) / 180, (elevation * Math.PI) / 180];
  const [ca, sa, ce, se] = [Math.cos(a), Math.sin(a), Math.cos(e), Math.sin(e)];
  return {
    across: [ca, sa, 0],
    up: [-sa * se, ca * se, ce],
    towards: [sa * ce, -ca * ce, se],
    scale,
  };
}

/** Where a point of space lands on the paper (y down). */
export function project(view: SpaceView, point: Point3): Point {
  return [dot(point, view.across) * view.scale, -dot(point, view.up) * view.scale];
}

/** How near the viewer a point is, in real millimetres: larger is nearer. */
export function nearness(view: SpaceView, point: Point3): number {
  return dot(point, view.towards);
}

export function dot(a: Point3, b: Point3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** From the front and right, a little above. */
export const FRONT_VIEW: readonly [Degrees, Degrees] = [32, 26];
/** From behind and left, and below: what the first view hides. */
export const BEHIND_VIEW: readonly [Degrees, Degrees] = [212, -24];
/** From behind, above. */
export const BACK_VIEW: readonly [Degrees, Degrees] = [212, 26];
