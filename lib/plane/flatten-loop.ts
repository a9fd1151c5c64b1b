import type { Count, Loop, Mm, Point, Polygon, Radians, Segment } from "./types.ts";
import { arcRadius, arcSweep, pointAlong } from "./segments.ts";

/** How far a flattened arc may stray from the true one, where plan.json or a lay needs corners. */
export const flatteningTolerance: Mm = 0.05;

/** Corners of a loop, arcs cut into chords no further than `tolerance` from the arc. */
export const flattenLoop = (loop: Loop, tolerance: Mm = flatteningTolerance): Polygon =>
  loop.flatMap((segment) => flattenSegment(segment, tolerance));

/**
 * The start of a segment and, for an arc, points along it; its end is the next segment's start.
 * A chord over an angle a strays r(1 − cos(a/2)) from its arc.
 */
export function flattenSegment(
  segment: Segment,
  tolerance: Mm = flatteningTolerance,
): readonly Point[] {
  if (segment.kind === "line") return [segment.from];
  const radius = arcRadius(segment);
  const step = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
  const chords = chordsFor(Math.abs(arcSweep(segment)), step);
  return Array.from({ length: chords }, (_, i) =>
    i === 0 ? segment.from : pointAlong(segment, i / chords),
  );
}

/** Whole quarters get a whole number of chords each, so that a circle looks alike from four sides. */
function chordsFor(sweep: Radians, step: Radians): Count {
  const quarters = Math.round(sweep / (Math.PI / 2));
  const isWhole = quarters > 0 && Math.abs(sweep - (quarters * Math.PI) / 2) < 1e-9;
  const parts = isWhole ? quarters : 1;
  return parts * Math.max(1, Math.ceil(sweep / parts / step - 1e-9));
}
