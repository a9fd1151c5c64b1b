import safety from "../../shared/safety/children.json" with { type: "json" };
import { isYoungerThan } from "./is-younger-than.ts";
import type { Check } from "./types.ts";

const { zip } = safety.rules;

/** Zips that a child could open to reach the foam. */
export const checkZipForChildren: Check = ({ project, covers }) => {
  if (!isYoungerThan(zip.underYears, project.audience)) return [];
  return covers
    .filter(({ closing }) => closing?.kind === "zip")
    .map(({ solid }) => ({
      id: `zip-child/${solid}`,
      severity: "warning",
      about: `solid/${solid}`,
      message: `A child who opens the zip of the ${solid} cover can crawl in, or bite off foam and choke on it.`,
      remedy:
        "Take the puller off the slider and open the zip with a paper clip, or sew the cover shut by hand.",
      source: zip.source,
    }));
};
