import type { Check } from "./types.ts";

/** Share of a block that must lie inside others for it to count as buried: all but rounding. */
const whole = 0.999;
/** Share from which an overlap is worth a word. */
const noticeable = 0.001;

/** Blocks that lie inside earlier ones, wholly (no use) or partly (foam cut away for nothing). */
export const checkBuriedBlocks: Check = ({ solids }) =>
  solids.flatMap((solid) =>
    solid.blocks
      .filter((block) => block.buried > noticeable)
      .map((block) => {
        const isWhole = block.buried >= whole;
        const share = `${Math.round(block.buried * 100)} %`;
        return {
          id: `${isWhole ? "buried" : "overlaps"}/${solid.id}/${block.id}`,
          severity: "note",
          about: `solid/${solid.id}`,
          message: isWhole
            ? `Block ${block.id} lies wholly inside other blocks of ${solid.id}, so it adds nothing.`
            : `${share} of block ${block.id} lies inside other blocks of ${solid.id}, and that foam must be cut away.`,
          remedy: isWhole
            ? "Leave the block out, or move it to where it should show."
            : "Shorten or move the block so that it only meets its neighbour.",
          source: "computed from the blocks",
        };
      }),
  );
