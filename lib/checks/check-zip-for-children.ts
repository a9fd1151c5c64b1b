import { isYoungerThan } from "./is-younger-than.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const zip = rules["zip-child"];

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
        "Turn the zip to the back or underside, take the puller off the slider and open it with a paper clip, or sew the cover shut by hand.",
      source: zip.source,
    }));
};
