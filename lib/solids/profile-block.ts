import { rectangleLoop } from "../plane/rectangle.ts";
import type { Loop, Mm, Point, Segment } from "../plane/types.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { line, reverseSegment } from "../plane/segments.ts";
import { drawnLength, sidesAlong } from "../project/rounded-corners.ts";
import type { Axis, BlockSpec, FrustumBlock, WedgeBlock } from "../project/types.ts";
import { roundedOutline } from "./rounded-outline.ts";

/** A block as an outline drawn along an axis: every kind but the frustum. */
export interface Profile {
  readonly axis: Axis;
  /** Where the outline's own origin lies, along the two outline axes and the drawing axis. */
  readonly origin: Point;
  readonly start: Mm;
  readonly height: Mm;
  /** Counter-clockwise in the two outline axes, taken in the order x, y, z. */
  readonly loop: Loop;
  /** Side of the block that each segment of the loop becomes. */
  readonly sides: readonly string[];
  /** Sides at the low and the high end of the axis. */
  readonly ends: readonly [low: string, high: string];
}

const endsOf = { x: ["left", "right"], y: ["front", "back"], z: ["underside", "top"] } as const;

export function profileBlock(block: Exclude<BlockSpec, FrustumBlock>): Profile {
  switch (block.kind) {
    case "box": {
      const [width, depth, height] = block.size;
      const sides = ["front", "right", "back", "left"];
      return drawn(block.at, "z", height, rectangleLoop(width, depth), sides);
    }
    case "rounded": {
      const { loop, sides } = roundedOutline(block);
      const words = sides.map((side) => (side === "around" ? side : sidesAlong[block.along][side]));
      return drawn(block.at, block.along, drawnLength(block.size, block.along), loop, words);
    }
    case "prism": {
      const corners = closed(block.outline);
      const sides = corners.map((_, i) => `side-${i + 1}`);
      return drawn(block.at, block.along, block.height, corners, sides);
    }
    case "cylinder": {
      const radius = block.diameter / 2;
      const centre: Point = [radius, radius];
      const at = (x: Mm, y: Mm): Point => [radius + x, radius + y];
      const [east, west] = [at(radius, 0), at(-radius, 0)];
      const half = (from: Point, to: Point): Segment => ({
        kind: "arc",
        from,
        to,
        centre,
        isClockwise: false,
      });
      return drawn(
        block.at,
        block.along,
        block.length,
        [half(east, west), half(west, east)],
        ["around", "around"],
      );
    }
    case "wedge":
      return wedgeProfile(block);
  }
}

/** A wedge is its triangle drawn from side to side. */
function wedgeProfile({ at, size: [width, depth, height], rises }: WedgeBlock): Profile {
  const triangle = (run: Mm, tip: Mm): Loop =>
    closed([
      [0, 0],
      [run, 0],
      [tip, height],
    ]);
  switch (rises) {
    case "back":
      return drawn(at, "x", width, triangle(depth, depth), ["underside", "back", "slope"]);
    case "front":
      return drawn(at, "x", width, triangle(depth, 0), ["underside", "slope", "front"]);
    case "right":
      return drawn(at, "y", depth, triangle(width, width), ["underside", "right", "slope"]);
    case "left":
      return drawn(at, "y", depth, triangle(width, 0), ["underside", "slope", "left"]);
  }
}

function drawn(
  at: readonly [Mm, Mm, Mm],
  axis: Axis,
  height: Mm,
  loop: Loop,
  sides: readonly string[],
): Profile {
  const [x, y, z] = at;
  const origin: Point = axis === "x" ? [y, z] : axis === "y" ? [x, z] : [x, y];
  const start = axis === "x" ? x : axis === "y" ? y : z;
  // An outline drawn clockwise is walked the other way; its sides keep their numbers.
  const isClockwise = polygonArea(loop.map((segment) => segment.from)) < 0;
  return {
    axis,
    origin,
    start,
    height,
    loop: isClockwise ? [...loop].reverse().map(reverseSegment) : loop,
    sides: isClockwise ? [...sides].reverse() : sides,
    ends: endsOf[axis],
  };
}

const closed = (corners: readonly Point[]): Loop =>
  corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]!));
