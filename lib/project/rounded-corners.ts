import type { Mm } from "../plane/types.ts";
import type { Axis, Place, RoundedCorner } from "./types.ts";

/** Sides of a rounded block's outline, as they are called when it is drawn upwards. */
export type OutlineSide = "front" | "right" | "back" | "left";

/**
 * What the sides of the outline are called on the block, by the axis it is drawn along: the outline lies
 * in the two other axes, in the order x, y, z.
 */
export const sidesAlong: Readonly<Record<Axis, Readonly<Record<OutlineSide, string>>>> = {
  x: { front: "underside", right: "back", back: "top", left: "front" },
  y: { front: "underside", right: "right", back: "top", left: "left" },
  z: { front: "front", right: "right", back: "back", left: "left" },
};

/** All corners of the outline, counter-clockwise. */
export const allCorners: readonly RoundedCorner[] = [
  "front-left",
  "front-right",
  "back-right",
  "back-left",
];

/** What an author calls a corner: "front-left" of an upright block, "front-top" of one drawn along x. */
export function cornerName(corner: RoundedCorner, along: Axis): string {
  const [across, side] = corner.split("-") as [OutlineSide, OutlineSide];
  const words = sidesAlong[along];
  return along === "z" ? corner : `${words[side]}-${words[across]}`;
}

/** Every name of a corner, whatever the axis. */
export const cornerNames = (["z", "x", "y"] as const).flatMap((along) =>
  allCorners.map((corner) => cornerName(corner, along)),
) as [string, ...string[]];

/** The two sizes of the outline. */
export function outlineSize([width, depth, height]: Place, along: Axis): readonly [Mm, Mm] {
  return along === "x" ? [depth, height] : along === "y" ? [width, height] : [width, depth];
}

/** How far the outline is drawn. */
export const drawnLength = ([width, depth, height]: Place, along: Axis): Mm =>
  along === "x" ? width : along === "y" ? depth : height;
