import type { Loop, Mm, Point, Radians, Segment } from "../plane/types.ts";
import { angleOf, cross, distance, dot, subtract, wholeTurn } from "../plane/points.ts";
import { line } from "../plane/segments.ts";
import { add3, cross3, length3, subtract3 } from "./points3.ts";
import { axisPoint } from "./surfaces.ts";
import { flattenPoint } from "./lift-point.ts";
import type { Point3, Surface } from "./types.ts";

const straightWithin: Mm = 1e-6;

/**
 * The flat segments of a stretch of boundary: one line, or arcs of the true circle, or on a free
 * curve one short line after another.
 *
 * @param flat corners of the stretch in the face's own flat
 * @param neighbour surface on the other side, which tells whether a flat face is cut by a circle
 */
export function flattenRun(flat: readonly Point[], own: Surface, neighbour: Surface): Loop {
  const [first, last] = [flat[0]!, flat.at(-1)!];
  const centre = circleCentre(own, neighbour);
  if (centre !== null && isRound(flat, centre)) return arcsThrough(flat, centre);
  const off = flat.map((point) => Math.abs(cross(subtract(last, first), subtract(point, first))));
  const reach = distance(first, last);
  if (reach > straightWithin && Math.max(...off) / reach < straightWithin)
    return [line(first, last)];
  return flat.slice(1).map((point, i) => line(flat[i]!, point));
}

/** Whether two surfaces meet neither in straight lines nor in circles square to an axis. */
export const meetFreely = (a: Surface, b: Surface): boolean =>
  (a.kind !== "plane" || b.kind !== "plane") &&
  circleCentre(a, b) === null &&
  circleCentre(b, a) === null;

/** Centre of the circle in which two surfaces meet, in the flat of the first; null for none. */
function circleCentre(own: Surface, neighbour: Surface): Point | null {
  if (own.kind === "cone") return isSquareTo(neighbour, own) ? [0, 0] : null;
  if (own.kind !== "plane" || neighbour.kind === "plane" || !isSquareTo(own, neighbour))
    return null;
  return flattenPoint(own, axisPoint(neighbour));
}

/** Whether a surface cuts a round one square to its axis, or shares its axis: in a circle. */
function isSquareTo(other: Surface, round: Surface & { kind: "cylinder" | "cone" }): boolean {
  if (other.kind === "plane") {
    return length3(cross3(cross3(other.across, other.rise), round.axis)) < 1e-9;
  }
  const apart = subtract3(axisPoint(other), axisPoint(round));
  return (
    length3(cross3(other.axis, round.axis)) < 1e-9 && length3(cross3(apart, round.axis)) < 1e-6
  );
}

function isRound(flat: readonly Point[], centre: Point): boolean {
  const radius = distance(flat[0]!, centre);
  return (
    radius > straightWithin &&
    flat.every((point) => Math.abs(distance(point, centre) - radius) < 1e-5)
  );
}

/** Arcs of at most half a circle through points on it. */
function arcsThrough(flat: readonly Point[], centre: Point): Loop {
  let sweep: Radians = 0;
  flat.slice(1).forEach((point, i) => {
    sweep += turnBetween(subtract(flat[i]!, centre), subtract(point, centre));
  });
  const isClockwise = sweep < 0;
  const parts = Math.max(1, Math.ceil(Math.abs(sweep) / Math.PI - 1e-9));
  const joints = Array.from({ length: parts + 1 }, (_, part) => {
    if (part === 0) return flat[0]!;
    if (part === parts) return flat.at(-1)!;
    return onCircle(centre, flat[0]!, (sweep * part) / parts);
  });
  return joints
    .slice(1)
    .map((to, i): Segment => ({ kind: "arc", from: joints[i]!, to, centre, isClockwise }));
}

const turnBetween = (a: Point, b: Point): Radians => Math.atan2(cross(a, b), dot(a, b));

function onCircle(centre: Point, from: Point, by: Radians): Point {
  const radius = distance(from, centre);
  const angle = wholeTurn(angleOf(subtract(from, centre)) + by);
  return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
}

/**
 * Whether the edge along a path is straight: its corners lie in line, and the line runs along each
 * round surface as its rulings do. A short chord of a curve has only two ends, but no ruling.
 */
export function isStraightPath(path: readonly Point3[], surfaces: readonly Surface[]): boolean {
  const start = path[0]!;
  const reach = subtract3(path.at(-1)!, start);
  const length = length3(reach);
  if (length < straightWithin) return false;
  const isInLine = path.every(
    (point) => length3(cross3(reach, subtract3(point, start))) / length < straightWithin,
  );
  return isInLine && surfaces.every((surface) => offRuling(surface, start, reach) < straightWithin);
}

/** How far a line drifts off the rulings of a round surface over its length. */
function offRuling(surface: Surface, start: Point3, reach: Point3): Mm {
  switch (surface.kind) {
    case "plane":
      return 0;
    case "cylinder":
      return length3(cross3(reach, surface.axis));
    case "cone": {
      // Every ruling runs through the tip.
      const [near, far] = [start, add3(start, reach)].map((end) => subtract3(end, surface.tip));
      const farthest = Math.max(length3(near!), length3(far!));
      return length3(cross3(near!, far!)) / farthest;
    }
  }
}
