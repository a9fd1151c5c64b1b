import { rules } from "./rules.ts";
import { sitterFor } from "./sitter-for.ts";
import type { Check } from "./types.ts";

/** Covers for children that cannot come off to be washed. */
export const checkWashing: Check = ({ covers, project: { audience } }) => {
  if (audience === null || sitterFor(audience).years === null) return [];
  return covers
    .filter(({ closing }) => closing?.kind === "hand-sewn")
    .map(({ solid }) => ({
      id: `cover-stays/${solid}`,
      severity: "note",
      about: `solid/${solid}`,
      message: `The ${solid} cover is sewn shut: no child can open it, and it cannot come off to be washed.`,
      remedy:
        "Sew a loose second cover over it, use cloth that wipes clean, or close it with a zip without its puller.",
      source: rules["cover-stays"].source,
    }));
};
