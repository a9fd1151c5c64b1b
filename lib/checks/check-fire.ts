import safety from "../../shared/safety/fire.json" with { type: "json" };
import { countryRule } from "./country-of.ts";
import { reviewedSource } from "./reviewed-source.ts";
import type { Check } from "./types.ts";

/** Fire advice for anything with foam in it: the rule of the country, and what changes once it is supplied. */
export const checkFire: Check = ({ project, solids }) => {
  if (!solids.some((solid) => solid.blocks.some((block) => block.foam !== null))) return [];
  const rule = countryRule(project.country);
  const source = reviewedSource(rule.source, safety.reviewed);
  return [
    {
      id: "fire",
      severity: "warning",
      about: "project",
      message: `Foam burns fast, and its smoke is poisonous. ${rule.message}`,
      remedy: `${safety.always} ${rule.remedy}`,
      source,
    },
    {
      id: "fire-supply",
      severity: "note",
      about: "project",
      message: rule.supply.message,
      remedy: rule.supply.remedy,
      source,
    },
  ];
};
