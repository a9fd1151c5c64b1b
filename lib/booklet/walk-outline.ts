import type { Loop, Mm, Point, Radians } from "../plane/types.ts";
import { add, angleOf, cross, dot, fromAngle, rotate, subtract } from "../plane/points.ts";
import { arcRadius, arcSweep, directionAlong, segmentLength } from "../plane/segments.ts";

/** A way to draw an outline leg by leg, without a pattern. */
export interface Walk {
  readonly start: Point;
  /** Direction of the first leg. */
  readonly heading: Radians;
  readonly legs: readonly WalkLeg[];
}

export type WalkLeg = StraightLeg | CurvedLeg;

interface LegBase {
  /** Turn made on the spot before the leg: positive to the left, 0 before the first. */
  readonly turn: Radians;
  readonly length: Mm;
  readonly to: Point;
}

export interface StraightLeg extends LegBase {
  readonly kind: "straight";
}

export interface CurvedLeg extends LegBase {
  readonly kind: "curved";
  readonly radius: Mm;
  /** Angle the curve runs through: positive when it bends to the left. */
  readonly sweep: Radians;
  readonly centre: Point;
}

/**
 * The walk round an outline from its lowest-left corner, in the loop's own sense. Lengths are true,
 * along the arc where the outline is curved. An empty loop has no legs.
 */
export function walkOutline(loop: Loop): Walk {
  const segments = startAtLowestLeft(loop);
  const legs = segments.map((segment, i): WalkLeg => {
    const before = i === 0 ? null : segments[i - 1]!;
    const turn =
      before === null ? 0 : turnBetween(directionAlong(before, 1), directionAlong(segment, 0));
    const base = { turn, length: segmentLength(segment), to: segment.to };
    if (segment.kind === "line") return { kind: "straight", ...base };
    const { centre } = segment;
    return {
      kind: "curved",
      ...base,
      radius: arcRadius(segment),
      sweep: arcSweep(segment),
      centre,
    };
  });
  const first = segments[0];
  if (first === undefined) return { start: [0, 0], heading: 0, legs: [] };
  return { start: first.from, heading: angleOf(directionAlong(first, 0)), legs };
}

/** The loop begun at the corner that lies lowest, and leftmost of those. */
export function startAtLowestLeft(loop: Loop): Loop {
  const isLower = (a: Point, b: Point): boolean =>
    Math.abs(a[1] - b[1]) > 1e-6 ? a[1] < b[1] : a[0] < b[0] - 1e-6;
  const first = loop.reduce(
    (best, segment, i) => (isLower(segment.from, loop[best]!.from) ? i : best),
    0,
  );
  return [...loop.slice(first), ...loop.slice(0, first)];
}

/** Follow the words of a walk blindly and note the corner reached after each leg. */
export function replayWalk({ start, heading, legs }: Walk): readonly Point[] {
  let at = start;
  let facing = heading;
  return legs.map((leg) => {
    facing += leg.turn;
    if (leg.kind === "straight") {
      at = add(at, fromAngle(facing, leg.length));
    } else {
      const side = Math.sign(leg.sweep);
      const centre = add(
        at,
        fromAngle(facing + (side * Math.PI) / 2, leg.length / Math.abs(leg.sweep)),
      );
      at = add(centre, rotate(subtract(at, centre), leg.sweep));
      facing += leg.sweep;
    }
    return at;
  });
}

const turnBetween = (a: Point, b: Point): Radians => Math.atan2(cross(a, b), dot(a, b));
