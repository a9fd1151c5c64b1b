import { meetingBlocks } from "../seams/meeting-blocks.ts";
import type { Solid, SolidBlock } from "../solids/types.ts";
import type { Check, Finding } from "./types.ts";

/** Gaps below this are touching, in mm. */
const touching = 0.01;

/** A solid whose blocks do not hold together by faces: apart, or touching only along an edge. */
export const checkParts: Check = ({ solids, covers, format }) =>
  solids.flatMap((solid) => {
    const isCovered = covers.some((cover) => cover.solid === solid.id);
    // Cloth cannot run through a line or the air.
    const inBags = isCovered
      ? " The cover falls apart into bags, and only one has an opening."
      : "";
    const [first, ...others] = solid.parts;
    if (first === undefined) return [];
    if (others.length === 0) return meetsInLine(solid);
    return others.map((part) => {
      const rest = solid.parts.filter((one) => one !== part).flat();
      const gap = smallestGap(solid, part, rest);
      const names = part.join(" and ");
      const isTouching = gap <= touching;
      return {
        id: `${isTouching ? "touches-at-an-edge" : "floats-apart"}/${solid.id}/${part.join("+")}`,
        severity: "warning",
        about: `solid/${solid.id}`,
        message: isTouching
          ? `${names} and the rest of ${solid.id} meet only along an edge or at a corner. Glue cannot hold them there.${inBags}`
          : `${names} stands ${format.length(gap)} away from the rest of ${solid.id}. Nothing joins them.${inBags}`,
        remedy:
          "Move the block so that it shares a face with another, or make it a solid of its own.",
        source: "computed from the blocks",
      };
    });
  });

/** Two blocks of one body whose edges lie on one another: nothing holds there, and no cloth fits between. */
function meetsInLine(solid: Solid): readonly Finding[] {
  const met = meetingBlocks(solid);
  if (met === null) return [];
  const [one, other] = met;
  return [
    {
      id: `meets-in-a-line/${solid.id}/${one}+${other}`,
      severity: "warning",
      about: `solid/${solid.id}`,
      message: `${one} and ${other} of ${solid.id} meet along an edge only. Glue cannot hold them there, and the cover has no room between them.`,
      remedy: `Move ${other} so that the two share a face or leave a gap.`,
      source: "computed from the blocks",
    },
  ];
}

function smallestGap(solid: Solid, part: readonly string[], rest: readonly string[]): number {
  const blocksOf = (ids: readonly string[]) => solid.blocks.filter(({ id }) => ids.includes(id));
  const gaps = blocksOf(part).flatMap((one) =>
    blocksOf(rest).map((other) => gapBetween(one, other)),
  );
  return Math.min(...gaps);
}

/** Distance between the boxes round two blocks; 0 when they meet or overlap. */
function gapBetween(one: SolidBlock, other: SolidBlock): number {
  const apart = ([0, 1, 2] as const).map((axis) =>
    Math.max(
      0,
      other.min[axis] - (one.min[axis] + one.size[axis]),
      one.min[axis] - (other.min[axis] + other.size[axis]),
    ),
  );
  return Math.hypot(...apart);
}
