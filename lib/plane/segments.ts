import type { Mm, Point, Radians, Segment } from "./types.ts";
import { angleOf, distance, leftOf, scale, subtract, unit, wholeTurn } from "./points.ts";

export const line = (from: Point, to: Point): Segment => ({ kind: "line", from, to });

/** Angle an arc runs through: positive counter-clockwise. Never 0. */
export function arcSweep(arc: Segment & { kind: "arc" }): Radians {
  const start = angleOf(subtract(arc.from, arc.centre));
  const end = angleOf(subtract(arc.to, arc.centre));
  const forward = wholeTurn(end - start) || 2 * Math.PI;
  return arc.isClockwise ? forward - 2 * Math.PI || -2 * Math.PI : forward;
}

export const arcRadius = (arc: Segment & { kind: "arc" }): Mm => distance(arc.from, arc.centre);

export function segmentLength(segment: Segment): Mm {
  switch (segment.kind) {
    case "line":
      return distance(segment.from, segment.to);
    case "arc":
      return arcRadius(segment) * Math.abs(arcSweep(segment));
  }
}

export function reverseSegment(segment: Segment): Segment {
  switch (segment.kind) {
    case "line":
      return { kind: "line", from: segment.to, to: segment.from };
    case "arc":
      return { ...segment, from: segment.to, to: segment.from, isClockwise: !segment.isClockwise };
  }
}

/** The point a share of the way along: 0 is `from`, 1 is `to`. */
export function pointAlong(segment: Segment, share: number): Point {
  switch (segment.kind) {
    case "line":
      return [
        segment.from[0] + (segment.to[0] - segment.from[0]) * share,
        segment.from[1] + (segment.to[1] - segment.from[1]) * share,
      ];
    case "arc": {
      const radius = arcRadius(segment);
      const angle = angleOf(subtract(segment.from, segment.centre)) + arcSweep(segment) * share;
      return [
        segment.centre[0] + Math.cos(angle) * radius,
        segment.centre[1] + Math.sin(angle) * radius,
      ];
    }
  }
}

/** Direction of travel at the start (share 0), the end (share 1) or between. */
export function directionAlong(segment: Segment, share: number): Point {
  switch (segment.kind) {
    case "line":
      return unit(subtract(segment.to, segment.from));
    case "arc": {
      const outward = unit(subtract(pointAlong(segment, share), segment.centre));
      return segment.isClockwise ? scale(leftOf(outward), -1) : leftOf(outward);
    }
  }
}
