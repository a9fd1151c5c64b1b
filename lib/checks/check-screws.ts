import { countOf } from "../estimate/count-of.ts";
import { jointsBetween } from "../estimate/joints-between.ts";
import { isScrew, screwsFor } from "../estimate/screws-for.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** Fewer screws on the list than the joints between the placed parts take. */
export const checkScrews: Check = ({ project }) => {
  const listed = project.buy.filter((line) => isScrew(line) && line.unit === null);
  const joints = jointsBetween(project);
  if (listed.length === 0 || joints.length === 0) return [];
  const have = listed.reduce((sum, { quantity }) => sum + quantity, 0);
  const wanted = screwsFor(joints);
  if (have >= wanted) return [];
  return [
    {
      id: "screws-few/1",
      severity: "note",
      about: "project",
      message: `The placed parts meet at ${countOf(joints.length, "joint")}. Two screws for every part that holds on to another are ${wanted}, and ${have} ${have === 1 ? "is" : "are"} listed.`,
      remedy: "Raise the quantity under `buy`, or fix the rest with glue or dowels.",
      source: rules["screws-few"].source,
    },
  ];
};
