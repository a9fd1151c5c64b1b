import { outlineSize, sidesAlong } from "./rounded-corners.ts";
import type { Axis, BlockSpec } from "./types.ts";

const endsAlong: Readonly<Record<Axis, readonly [string, string]>> = {
  x: ["left", "right"],
  y: ["front", "back"],
  z: ["top", "underside"],
};

/** Upright sides that slope away to nothing, and the two that become triangles, by the high side. */
const wedgeSides = {
  back: ["slope", "underside", "back", "left", "right"],
  front: ["slope", "underside", "front", "left", "right"],
  left: ["slope", "underside", "left", "front", "back"],
  right: ["slope", "underside", "right", "front", "back"],
} as const;

/**
 * Names of the sides a block has, as in `<block>/<side>`.
 *
 * Sides of a prism are counted from 1 along the outline as the author gave it: `side-1` runs from the
 * first corner to the second. `around` is any curved side.
 */
export function sidesOf(block: BlockSpec): readonly string[] {
  switch (block.kind) {
    case "box":
      return ["top", "underside", "front", "back", "left", "right"];
    case "prism":
      return [...endsAlong[block.along], ...block.outline.map((_, index) => `side-${index + 1}`)];
    case "wedge":
      return wedgeSides[block.rises];
    case "cylinder":
      return ["around", ...endsAlong[block.along]];
    case "rounded":
      return [
        ...endsAlong[block.along],
        ...flatSides(block),
        ...(block.corners.length > 0 ? ["around"] : []),
      ];
    case "frustum":
      return ["around", "underside", ...(block.top > 0 ? ["top"] : [])];
  }
}

/** Sides of a rounded block's outline that still have a flat stretch. */
function flatSides({ size, radius, along, corners }: BlockSpec & { readonly kind: "rounded" }) {
  const [width, depth] = outlineSize(size, along);
  return (["front", "back", "left", "right"] as const)
    .filter((side) => {
      const rounded = corners.filter((corner) => corner.split("-").includes(side)).length;
      const run = side === "front" || side === "back" ? width : depth;
      return run - rounded * radius > 1e-6;
    })
    .map((side) => sidesAlong[along][side]);
}
