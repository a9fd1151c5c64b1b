import type { Mm, Radians } from "../plane/types.ts";
import { wholeTurn } from "../plane/points.ts";
import {
  add3,
  cross3,
  distance3,
  dot3,
  flatten3,
  length3,
  scale3,
  subtract3,
  unit3,
} from "./points3.ts";
import { axisPoint } from "./surfaces.ts";
import type { Direction, Point3, Surface } from "./types.ts";

export type Round = Surface & { readonly kind: "cylinder" | "cone" };

/** Points this near a line lie on it: the kernel is good to about 1e-4 mm. */
export const onLine: Mm = 2e-4;

/** Angle about the axis from the surface's own zero, in a whole turn, and distance from the axis. */
export function polarPlace(surface: Round, point: Point3): { angle: Radians; reach: Mm } {
  const out = flatten3(subtract3(point, axisPoint(surface)), surface.axis);
  const side = cross3(surface.axis, surface.zero);
  return {
    angle: wholeTurn(Math.atan2(dot3(out, side), dot3(out, surface.zero))),
    reach: length3(out),
  };
}

/** The direction from the axis at an angle from the surface's own zero. */
export function directionAt(surface: Round, angle: Radians): Direction {
  const side = cross3(surface.axis, surface.zero);
  return unit3(add3(scale3(surface.zero, Math.cos(angle)), scale3(side, Math.sin(angle))));
}

export const isTip = (surface: Surface, point: Point3): boolean =>
  surface.kind === "cone" && distance3(point, surface.tip) < 1e-6;

/** The shorter way from one angle to another, in (−π, π]. */
export function turnTo(from: Radians, to: Radians): Radians {
  const ahead = wholeTurn(to - from);
  return ahead > Math.PI ? ahead - 2 * Math.PI : ahead;
}

/** The angles a triangle covers. */
export interface Span {
  readonly start: Radians;
  readonly width: Radians;
  /** An angle this near one of its ends is not across it. */
  readonly hair: Radians;
}

/** The angles covered by a triangle of a round surface; it must cover less than half a turn. */
export function spanOf(surface: Round, corners: readonly Point3[]): Span {
  const places = corners
    .filter((corner) => !isTip(surface, corner))
    .map((corner) => polarPlace(surface, corner));
  const hair: Radians = onLine / Math.min(...places.map(({ reach }) => reach));
  // From which corner do the others lie within half a turn ahead?
  const spans = places.map(({ angle }) => ({
    start: angle,
    width: Math.max(...places.map((other) => wholeTurn(other.angle - angle))),
  }));
  const { start, width } = spans.reduce((a, b) => (b.width < a.width ? b : a));
  return { start, width, hair };
}

export const isAcross = ({ start, width, hair }: Span, angle: Radians): boolean => {
  const ahead = wholeTurn(angle - start);
  return ahead > hair && ahead < width - hair;
};

/** Narrower gaps are the kernel's rounding. */
const leastGap: Radians = 1e-3;

/** The middle of the widest part of the turn that nothing covers; null where all is covered. */
export function middleOfGap(spans: readonly Span[]): Radians | null {
  const ordered = [...spans].sort((a, b) => a.start - b.start);
  const first = ordered[0]!.start;
  // A triangle that runs on past the whole turn covers the beginning too.
  let covered = Math.max(first, ...spans.map(({ start, width }) => start + width - 2 * Math.PI));
  let widest = { start: 0, width: 0 };
  for (const { start, width } of [...ordered, { start: first + 2 * Math.PI, width: 0 }]) {
    const gap = start - covered;
    if (gap > widest.width + 1e-6) widest = { start: covered, width: gap };
    covered = Math.max(covered, start + width);
  }
  return widest.width > leastGap ? widest.start + widest.width / 2 : null;
}
