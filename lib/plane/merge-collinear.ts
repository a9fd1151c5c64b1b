import type { Loop, Mm, Radians, Segment } from "./types.ts";
import { distance } from "./points.ts";
import { arcRadius, arcSweep, directionAlong } from "./segments.ts";

/** Below this two points are one. */
export const samePlace: Mm = 1e-6;

/** Whether b runs straight (or on the same circle) on from a. */
export function runsOn(a: Segment, b: Segment): boolean {
  if (a.kind !== b.kind) return false;
  const [end, start] = [directionAlong(a, 1), directionAlong(b, 0)];
  const isSmooth =
    Math.abs(end[0] * start[1] - end[1] * start[0]) < 1e-7 &&
    end[0] * start[0] + end[1] * start[1] > 0;
  if (!isSmooth || a.kind === "line" || b.kind === "line") return isSmooth;
  return (
    a.isClockwise === b.isClockwise &&
    distance(a.centre, b.centre) < 1e-5 &&
    Math.abs(arcRadius(a) - arcRadius(b)) < 1e-5
  );
}

/** One segment from the start of `a` to the end of `b`; they must run on from each other. */
export const joinSegments = (a: Segment, b: Segment): Segment => ({ ...a, to: b.to });

/**
 * A loop with its straight runs in one piece each. Arcs are joined up to half a circle, so that no
 * arc has to stand for a whole one.
 */
export function mergeCollinear(loop: Loop): Loop {
  const merged: Segment[] = [];
  for (const segment of loop) {
    const last = merged.at(-1);
    if (last !== undefined && isOne(last, segment)) {
      merged[merged.length - 1] = joinSegments(last, segment);
    } else merged.push(segment);
  }
  const [first, last] = [merged[0], merged.at(-1)];
  if (merged.length > 2 && first && last && isOne(last, first)) {
    merged[0] = joinSegments(last, first);
    merged.pop();
  }
  return merged;
}

const isOne = (a: Segment, b: Segment): boolean =>
  runsOn(a, b) && (a.kind === "line" || b.kind === "line" || sweepOf(a) + sweepOf(b) < halfTurn);

const sweepOf = (arc: Segment & { kind: "arc" }): Radians => Math.abs(arcSweep(arc));
/** A hair more, so that two quarters make a half. */
const halfTurn: Radians = Math.PI + 1e-9;
