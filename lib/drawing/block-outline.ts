import type { Loop, Mm, Point, Segment } from "../plane/types.ts";
import { drawnLength } from "../project/rounded-corners.ts";
import { roundedOutline } from "../solids/rounded-outline.ts";
import type { BlockSpec } from "../project/types.ts";

/** The side of a block that its shape is drawn on, and how deep the block runs behind it. */
export interface BlockOutline {
  readonly loop: Loop;
  /** What the outline is: "seen from above". */
  readonly from: string;
  readonly depth: Mm;
}

/** The outline a block is cut to; null for a box, which needs none. */
export function blockOutline(spec: BlockSpec): BlockOutline | null {
  switch (spec.kind) {
    case "box":
      return null;
    case "prism":
      return { loop: lines(spec.outline), from: seenAlong[spec.along], depth: spec.height };
    case "wedge":
      return wedgeOutline(spec.size, spec.rises);
    case "cylinder":
      return {
        loop: circle(spec.diameter / 2),
        from: seenAlong[spec.along],
        depth: spec.length,
      };
    case "rounded":
      return {
        loop: roundedOutline(spec).loop,
        from: seenAlong[spec.along],
        depth: drawnLength(spec.size, spec.along),
      };
    case "frustum":
      return {
        loop: lines(frustumSide(spec.base, spec.top, spec.height)),
        from: "cut through the middle, seen from the front",
        depth: spec.base,
      };
  }
}

const seenAlong = {
  x: "seen from the right side",
  y: "seen from the front",
  z: "seen from above",
} as const;

function lines(corners: readonly Point[]): Loop {
  return corners.map((from, index): Segment => ({
    kind: "line",
    from,
    to: corners[(index + 1) % corners.length] ?? from,
  }));
}

function circle(radius: Mm): Loop {
  const centre: Point = [radius, radius];
  const [a, b]: [Point, Point] = [
    [0, radius],
    [2 * radius, radius],
  ];
  return [
    { kind: "arc", from: a, to: b, centre, isClockwise: false },
    { kind: "arc", from: b, to: a, centre, isClockwise: false },
  ];
}

function wedgeOutline(
  [width, depth, height]: readonly [Mm, Mm, Mm],
  rises: "back" | "front" | "left" | "right",
): BlockOutline {
  switch (rises) {
    case "back":
      return {
        loop: lines([
          [0, 0],
          [depth, 0],
          [depth, height],
        ]),
        from: seenAlong.x,
        depth: width,
      };
    case "front":
      return {
        loop: lines([
          [0, 0],
          [depth, 0],
          [0, height],
        ]),
        from: seenAlong.x,
        depth: width,
      };
    case "right":
      return {
        loop: lines([
          [0, 0],
          [width, 0],
          [width, height],
        ]),
        from: seenAlong.y,
        depth,
      };
    case "left":
      return {
        loop: lines([
          [0, 0],
          [width, 0],
          [0, height],
        ]),
        from: seenAlong.y,
        depth,
      };
  }
}

function frustumSide(base: Mm, top: Mm, height: Mm): Point[] {
  const widest = Math.max(base, top);
  const [b, t] = [(widest - base) / 2, (widest - top) / 2];
  return [[b, 0], [b + base, 0], [t + top, height], ...(top > 0 ? [[t, height] as Point] : [])];
}
