import safety from "../../shared/safety/children.json" with { type: "json" };
import { isYoungerThan } from "./is-younger-than.ts";
import { inMillimetres } from "./in-millimetres.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const smallParts = rules["small-parts"];

/** Bought things that come off small enough to be swallowed, for a child under three. */
export const checkSmallParts: Check = ({ project }) => {
  if (!isYoungerThan(smallParts.underYears, project.audience)) return [];
  return project.buy.flatMap((line, index) => {
    const word = safety.smallPartWords.find((one) =>
      new RegExp(`\\b${one}s?\\b`, "i").test(line.item),
    );
    if (word === undefined) return [];
    return [
      {
        id: `small-parts/${index + 1}`,
        severity: "warning",
        about: `buy/${index + 1}`,
        message:
          `${line.item}: a part that fits into a cylinder ${inMillimetres(smallParts.diameter)} across and ` +
          `${inMillimetres(smallParts.depth)} deep can choke a child under ${smallParts.underYears}.`,
        remedy:
          "Leave it off, or use one too large for that cylinder, and check each week that it holds.",
        source: smallParts.source,
      },
    ];
  });
};
