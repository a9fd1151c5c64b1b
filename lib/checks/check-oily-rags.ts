import safety from "../../shared/safety/cautions.json" with { type: "json" };
import { isDrying } from "../estimate/drying-finish.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** A drying oil, stain or varnish on the list. */
export const checkOilyRags: Check = ({ project }) => {
  const index = project.buy.findIndex(isDrying);
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
