import type { Bounds, Loop, Mm, Point, Shape } from "../plane/types.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { subtract } from "../plane/points.ts";
import { line } from "../plane/segments.ts";

/** A loop of straight sides, counter-clockwise whatever way the corners came. */
export function polygonLoop(corners: readonly Point[]): Loop {
  const forward = polygonArea(corners) >= 0 ? corners : [...corners].reverse();
  return forward.map((corner, index) =>
    line(corner, forward[(index + 1) % forward.length] ?? corner),
  );
}

/** A circle as two half turns, counter-clockwise. */
export function circleLoop([x, y]: Point, diameter: Mm): Loop {
  const radius = diameter / 2;
  const [right, left]: readonly [Point, Point] = [
    [x + radius, y],
    [x - radius, y],
  ];
  return [
    { kind: "arc", from: right, to: left, centre: [x, y], isClockwise: false },
    { kind: "arc", from: left, to: right, centre: [x, y], isClockwise: false },
  ];
}

/** An outline with holes, moved so that its lowest-left corner is the origin; holes run clockwise. */
export function makeShape(outer: Loop, holes: readonly Loop[]): Shape {
  const { min } = loopBounds(outer);
  return {
    outer: shift(outer, min),
    holes: holes.map((hole) => shift(reverse(hole), min)),
  };
}

/** Width and height of the box round a loop. */
export function sizeOf({ min, max }: Bounds): readonly [Mm, Mm] {
  return [max[0] - min[0], max[1] - min[1]];
}

function shift(loop: Loop, by: Point): Loop {
  return loop.map((segment) => {
    const from = subtract(segment.from, by);
    const to = subtract(segment.to, by);
    return segment.kind === "line"
      ? { ...segment, from, to }
      : { ...segment, from, to, centre: subtract(segment.centre, by) };
  });
}

function reverse(loop: Loop): Loop {
  return [...loop].reverse().map((segment) => {
    const { from, to } = segment;
    return segment.kind === "line"
      ? { ...segment, from: to, to: from }
      : { ...segment, from: to, to: from, isClockwise: !segment.isClockwise };
  });
}
