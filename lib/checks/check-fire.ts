import safety from "../../shared/safety/fire.json" with { type: "json" };
import type { Check } from "./types.ts";

/** Fire advice for anything with foam in it, with the rule of the country named. */
export const checkFire: Check = ({ project, solids }) => {
  if (!solids.some((solid) => solid.blocks.some((block) => block.foam !== null))) return [];
  const { countries } = safety;
  const country = project.country?.toUpperCase() ?? "";
  const rule =
    country === "US"
      ? countries.US
      : country === "GB" || country === "UK"
        ? countries.GB
        : countries.other;
  return [
    {
      id: "fire",
      severity: "warning",
      about: "project",
      message: `Foam burns fast, and its smoke is poisonous. ${rule.message}`,
      remedy: `${safety.always} ${rule.remedy}`,
      source: rule.source,
    },
  ];
};
