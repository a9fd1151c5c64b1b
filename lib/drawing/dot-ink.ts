import type { Mm, Point } from "../plane/types.ts";
import type { PathInk } from "./types.ts";

/** A small filled dot at the end of a leader that points at an area. @source ISO 128-2: leader ends */
export function dotInk([x, y]: Point, radius: Mm = 0.5): PathInk {
  return { kind: "path", className: "head", paths: [ring([x, y], radius)], isObstacle: false };
}

/** A circle on the paper, for numbers. */
export function ringInk(at: Point, radius: Mm, className = "line ring"): PathInk {
  return { kind: "path", className, paths: [ring(at, radius)], isObstacle: false };
}

function ring([x, y]: Point, radius: Mm): PathInk["paths"][number] {
  const half = (to: Point) =>
    ({ kind: "arc", to, centre: [x, y], radius, isClockwise: true }) as const;
  return {
    from: [x - radius, y],
    segments: [half([x + radius, y]), half([x - radius, y])],
    isClosed: true,
  };
}
