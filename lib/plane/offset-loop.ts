import type { Loop, Mm, Point, Segment } from "./types.ts";
import { add, cross, distance, dot, leftOf, scale, subtract } from "./points.ts";
import { arcRadius, directionAlong, line } from "./segments.ts";

/** A corner sticks out at most this many allowances before it is cut blunt. */
export const mitreLimit = 3;

/**
 * Move each segment of a loop outward by its own distance and mitre the corners.
 *
 * Outward is to the right of travel: away from a counter-clockwise outer loop, into a clockwise
 * hole. Lines stay parallel, arcs keep their centre, so a circle's cut line is an exact circle.
 * A corner sharper than the mitre limit is cut blunt, square to its bisector.
 * Needs distances that leave every arc a positive radius. A loop offset across itself (a slot
 * narrower than two allowances) crosses itself; see `clean-cut-line.ts`.
 *
 * @param distances one for each segment, negative moves inward
 */
export function offsetLoop(loop: Loop, distances: readonly Mm[]): Loop {
  const moved = loop.map((segment, i) => moveOutward(segment, distances[i] ?? 0));
  const joins = moved.map((next, i) => {
    const before = (i + moved.length - 1) % moved.length;
    const reach =
      mitreLimit * Math.max(Math.abs(distances[before] ?? 0), Math.abs(distances[i] ?? 0));
    return joinCorner(moved[before]!, next, loop[i]!.from, reach);
  });
  return moved.flatMap((segment, i) => {
    const start = joins[i]!;
    const end = joins[(i + 1) % joins.length]!;
    const body: Segment = { ...segment, from: start.at(-1)!, to: end[0]! };
    const blunt = start.length > 1 ? [line(start[0]!, start[1]!)] : [];
    return [...blunt, body];
  });
}

function moveOutward(segment: Segment, by: Mm): Segment {
  switch (segment.kind) {
    case "line": {
      const shift = scale(leftOf(directionAlong(segment, 0)), -by);
      return line(add(segment.from, shift), add(segment.to, shift));
    }
    case "arc": {
      // Does the outside of the loop lie away from the centre?
      const radius = arcRadius(segment);
      const grown = segment.isClockwise ? radius - by : radius + by;
      const stretch = (point: Point) =>
        add(segment.centre, scale(subtract(point, segment.centre), grown / radius));
      return { ...segment, from: stretch(segment.from), to: stretch(segment.to) };
    }
  }
}

/** Where two moved segments meet: one point, or the two ends of a blunt corner. */
function joinCorner(before: Segment, next: Segment, corner: Point, reach: Mm): readonly Point[] {
  const [ahead, away] = [directionAlong(before, 1), directionAlong(next, 0)];
  // Do they run on smoothly, or meet already?
  if (distance(before.to, next.from) < 1e-9) return [before.to];
  if (Math.abs(cross(ahead, away)) < 1e-9 && dot(ahead, away) > 0) return [before.to, next.from];
  const meeting = meet(before, next);
  if (meeting !== null && distance(meeting, corner) <= reach + 1e-9) return [meeting];
  return bluntCorner(before, next, corner, reach);
}

/** Where two segments, drawn on, cross nearest to where they end and start. */
function meet(before: Segment, next: Segment): Point | null {
  const near = (points: readonly Point[]) =>
    [...points].sort((p, q) => distance(p, before.to) - distance(q, before.to))[0] ?? null;
  if (before.kind === "line" && next.kind === "line") {
    const along = subtract(before.to, before.from);
    const across = subtract(next.to, next.from);
    const area = cross(along, across);
    if (Math.abs(area) < 1e-12) return null;
    const share = cross(subtract(next.from, before.from), across) / area;
    return add(before.from, scale(along, share));
  }
  if (before.kind === "line")
    return near(meetLineCircle(before, next as Segment & { kind: "arc" }));
  if (next.kind === "line") return near(meetLineCircle(next, before));
  return near(meetCircles(before, next));
}

type ArcSegment = Segment & { kind: "arc" };

function meetLineCircle(straight: Segment, arc: ArcSegment): readonly Point[] {
  const direction = directionAlong(straight, 0);
  const foot = add(
    straight.from,
    scale(direction, dot(subtract(arc.centre, straight.from), direction)),
  );
  const half = arcRadius(arc) ** 2 - distance(foot, arc.centre) ** 2;
  // Does the line touch the circle, within rounding?
  if (half < -1e-6) return [];
  const reach = Math.sqrt(Math.max(0, half));
  return [add(foot, scale(direction, reach)), add(foot, scale(direction, -reach))];
}

/** @source Weisstein, "Circle-Circle Intersection", MathWorld */
function meetCircles(a: ArcSegment, b: ArcSegment): readonly Point[] {
  const apart = distance(a.centre, b.centre);
  if (apart < 1e-9) return [];
  const [ra, rb] = [arcRadius(a), arcRadius(b)];
  const along = (apart ** 2 - rb ** 2 + ra ** 2) / (2 * apart);
  const square = ra ** 2 - along ** 2;
  if (square < -1e-6) return [];
  const direction = scale(subtract(b.centre, a.centre), 1 / apart);
  const foot = add(a.centre, scale(direction, along));
  const up = scale(leftOf(direction), Math.sqrt(Math.max(0, square)));
  return [add(foot, up), subtract(foot, up)];
}

function bluntCorner(before: Segment, next: Segment, corner: Point, reach: Mm): readonly Point[] {
  const [ahead, back] = [directionAlong(before, 1), scale(directionAlong(next, 0), -1)];
  const bisector = add(ahead, back);
  const length = Math.hypot(bisector[0], bisector[1]);
  // Inward corners and corners that double back are simply joined straight.
  if (length < 1e-9 || cross(directionAlong(before, 1), directionAlong(next, 0)) < 0)
    return [before.to, next.from];
  const tip = add(corner, scale(bisector, reach / length));
  const square: Segment = line(tip, add(tip, leftOf(scale(bisector, 1 / length))));
  const [p, q] = [meet(straightOn(before, 1), square), meet(square, straightOn(next, 0))];
  return p === null || q === null ? [before.to, next.from] : [p, q];
}

/** The tangent at the end (1) or the start (0) of a segment, as a line. */
function straightOn(segment: Segment, share: 0 | 1): Segment {
  const from = share === 1 ? segment.to : segment.from;
  return line(from, add(from, directionAlong(segment, share)));
}
