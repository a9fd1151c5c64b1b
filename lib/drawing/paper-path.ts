import type { Loop, Mm, Point } from "../plane/types.ts";
import type { PaperPath, PaperSegment, ToPaper } from "./types.ts";

/** A run of points as a path. */
export function pathOf(points: readonly Point[], isClosed = false): PaperPath {
  const [from = [0, 0] as Point, ...rest] = points;
  return { from, segments: rest.map((to) => ({ kind: "line", to })), isClosed };
}

/** Lines and arcs taken to the paper; arcs stay arcs. Needs a projection that keeps angles. */
export function pathOfLoop(loop: Loop, toPaper: ToPaper, isClosed = true): PaperPath {
  const first = loop[0];
  const turnsOver = isMirroring(toPaper);
  const segments = loop.map((segment): PaperSegment => {
    const to = toPaper(segment.to);
    if (segment.kind === "line") return { kind: "line", to };
    const centre = toPaper(segment.centre);
    const radius = Math.hypot(to[0] - centre[0], to[1] - centre[1]);
    // Both pictures of "clockwise" are drawn with y down on the paper: a mirrored one keeps the word.
    return { kind: "arc", to, centre, radius, isClockwise: segment.isClockwise === turnsOver };
  });
  return { from: first ? toPaper(first.from) : [0, 0], segments, isClosed };
}

/** Does the projection turn the plane over as numbers go? y up to y down does. */
function isMirroring(toPaper: ToPaper): boolean {
  const [x0, y0] = toPaper([0, 0]);
  const [x1, y1] = toPaper([1, 0]);
  const [x2, y2] = toPaper([0, 1]);
  return (x1 - x0) * (y2 - y0) - (y1 - y0) * (x2 - x0) < 0;
}

/** Corners along a path, arcs cut into chords that stray no more than `tolerance`. */
export function flattenPath(path: PaperPath, tolerance: Mm = 0.02): Point[] {
  const points: Point[] = [path.from];
  for (const segment of path.segments) {
    const from = points[points.length - 1] ?? path.from;
    if (segment.kind === "arc") points.push(...chords(from, segment, tolerance));
    points.push(segment.to);
  }
  return points;
}

function chords(from: Point, arc: Extract<PaperSegment, { kind: "arc" }>, tolerance: Mm): Point[] {
  const { centre, radius } = arc;
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const sweep = arcSweep(from, arc);
  const ratio = Math.min(1, tolerance / Math.max(radius, tolerance));
  const count = Math.max(2, Math.ceil(Math.abs(sweep) / (2 * Math.acos(1 - ratio))));
  const between: Point[] = [];
  for (let i = 1; i < count; i += 1) {
    const angle = start + (sweep * i) / count;
    between.push([centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)]);
  }
  return between;
}

/** Angle an arc turns through on the paper, clockwise positive because y points down. */
export function arcSweep(from: Point, arc: Extract<PaperSegment, { kind: "arc" }>): number {
  const { centre, to } = arc;
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const end = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
  const turn = arc.isClockwise ? end - start : start - end;
  const positive = ((turn % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return arc.isClockwise ? positive : -positive;
}
