import type { Loop, Placement, Point, Segment, Shape } from "./types.ts";
import { add, rotate } from "./points.ts";
import { reverseSegment } from "./segments.ts";

export const atHome: Placement = { turn: 0, isFlipped: false, shift: [0, 0] };

export const placePoint = (point: Point, { turn, isFlipped, shift }: Placement): Point =>
  add(rotate(isFlipped ? [-point[0], point[1]] : point, turn), shift);

/** A segment moved; its direction of travel is kept even when it is flipped. */
export function placeSegment(segment: Segment, placement: Placement): Segment {
  const from = placePoint(segment.from, placement);
  const to = placePoint(segment.to, placement);
  switch (segment.kind) {
    case "line":
      return { kind: "line", from, to };
    case "arc":
      return {
        kind: "arc",
        from,
        to,
        centre: placePoint(segment.centre, placement),
        isClockwise: segment.isClockwise !== placement.isFlipped,
      };
  }
}

/** A loop moved. A flipped loop is walked the other way, so that its sense of turning is kept. */
export function placeLoop(loop: Loop, placement: Placement): Loop {
  const moved = loop.map((segment) => placeSegment(segment, placement));
  return placement.isFlipped ? moved.reverse().map(reverseSegment) : moved;
}

export const placeShape = (shape: Shape, placement: Placement): Shape => ({
  outer: placeLoop(shape.outer, placement),
  holes: shape.holes.map((hole) => placeLoop(hole, placement)),
});

/** The move that does `first`, then `second`. */
export function composePlacements(first: Placement, second: Placement): Placement {
  return {
    turn: second.turn + (second.isFlipped ? -first.turn : first.turn),
    isFlipped: first.isFlipped !== second.isFlipped,
    shift: placePoint(first.shift, second),
  };
}
