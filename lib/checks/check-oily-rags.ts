import safety from "../../shared/safety/cautions.json" with { type: "json" };
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** Finishes that heat themselves in a rag. */
const drying =
  /\b(linseed|tung|danish|teak|hard ?wax|wood) ?oil\b|\bhard ?wax\b|\boil finish\b|\bvarnish\b|\bstain\b/i;

/** A drying oil, stain or varnish on the list. */
export const checkOilyRags: Check = ({ project }) => {
  const index = project.buy.findIndex(({ item }) => drying.test(item));
  const line = project.buy[index];
  if (line === undefined) return [];
  const { hazard, consequence, avoid } = safety.cautions["oily-rags"];
  return [
    {
      id: `oily-rags/${index + 1}`,
      severity: "warning",
      about: `buy/${index + 1}`,
      message: `${line.item.charAt(0).toUpperCase()}${line.item.slice(1)}: ${hazard.charAt(0).toLowerCase()}${hazard.slice(1)} ${consequence}`,
      remedy: avoid,
      source: rules["oily-rags"].source,
    },
  ];
};
