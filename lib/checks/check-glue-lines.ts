import { listWords } from "../units/list-words.ts";
import type { Point3, Solid } from "../solids/types.ts";
import { findSeat } from "./find-seat.ts";
import { roughLength } from "./rough-length.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** Joints between blocks that come up to the seat, where dried glue makes a hard line. */
export const checkGlueLines: Check = ({ solids, project, format }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    if (seat === null) return [];
    const top = seat.max[2];
    const felt = solid.joints.filter(({ outlines, blocks }) =>
      outlines.some(
        (outline) => isFeltAt(outline, top) && isOnSeat(blocks, seat.face.names, solid),
      ),
    );
    if (felt.length === 0) return [];
    const names = felt.map(({ blocks: [one, other] }) => `${one} and ${other}`);
    return [
      {
        id: `glue-line/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message: `The joint between ${listWords(names)} comes up to the seat. Glue that dries there is felt as a hard line, and shows through thin cloth.`,
        remedy: `Keep the glue ${roughLength(20, { project, format })} back from the upper edge of the joint, and spray thinly. Batting hides the rest.`,
        source: rules["glue-line"].source,
      },
    ];
  });

/** Does an upright joint end at this height? */
function isFeltAt(outline: readonly Point3[], top: number): boolean {
  const heights = outline.map(([, , z]) => z);
  return Math.abs(Math.max(...heights) - top) < 1 && Math.min(...heights) < top - 1;
}

/** Do both blocks carry the seat? A back that stands on it ends there too, and hides its own joint. */
function isOnSeat(
  blocks: readonly [string, string],
  names: readonly string[],
  { blocks: all }: Solid,
): boolean {
  const carriers = new Set(names.map((name) => name.split("/")[0]));
  return blocks.every((id) => carriers.has(id) && all.some((block) => block.id === id));
}
