import type { Count, Mm } from "../plane/types.ts";
import { add3, distance3, dot3, scale3, subtract3 } from "./points3.ts";
import { polishPoint } from "./polish-points.ts";
import { distanceFrom } from "./surfaces.ts";
import type { Point3, Surface } from "./types.ts";

/** A free curve is kept as chords that stray no further than this from it. */
const strayWithin: Mm = 0.01;
/** Halvings of one chord of the kernel's, which strays a quarter of a millimetre at most. */
const most: Count = 6;

/**
 * Points to put between two points of the curve in which two surfaces meet, in order, so that its
 * chords lie close to the true curve. None where the chord lies close already, or where the
 * surfaces all but touch and no point of both is to be found near its middle.
 */
export function refineStep(
  from: Point3,
  to: Point3,
  surfaces: readonly Surface[],
  left: Count = most,
): readonly Point3[] {
  if (left === 0) return [];
  const onCurve = middleOfStep(from, to, surfaces);
  if (onCurve === null || distance3(midpoint(from, to), onCurve) < strayWithin) return [];
  return [
    ...refineStep(from, onCurve, surfaces, left - 1),
    onCurve,
    ...refineStep(onCurve, to, surfaces, left - 1),
  ];
}

/**
 * The point of the curve in which two surfaces meet that lies about half-way from one point of it to
 * another; null where the curve does not run from the one to the other.
 */
export function middleOfStep(
  from: Point3,
  to: Point3,
  surfaces: readonly Surface[],
): Point3 | null {
  const onCurve = polishPoint(midpoint(from, to), surfaces);
  const isOn = surfaces.every((surface) => Math.abs(distanceFrom(surface, onCurve)) < 1e-8);
  return isOn && isBetween(from, onCurve, to) ? onCurve : null;
}

const midpoint = (from: Point3, to: Point3): Point3 => scale3(add3(from, to), 0.5);

/** Whether a point lies beyond the start and before the end, seen along the step. */
function isBetween(from: Point3, point: Point3, to: Point3): boolean {
  const step = subtract3(to, from);
  const ahead = dot3(subtract3(point, from), step) / dot3(step, step);
  return ahead > 0.1 && ahead < 0.9;
}
