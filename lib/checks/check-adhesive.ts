import safety from "../../shared/safety/adhesive.json" with { type: "json" };
import { adhesiveArea } from "../estimate/adhesive-area.ts";
import { layeredArea } from "../estimate/layered-area.ts";
import { countryRule } from "./country-of.ts";
import { reviewedSource } from "./reviewed-source.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** Hazards of foam adhesive, once for everything that is glued up of blocks or of layers. */
export const checkAdhesive: Check = ({ solids, slabs, project, format: { area } }) => {
  const glued = solids.flatMap((solid) => {
    const coated = adhesiveArea(solid.joints) + layeredArea(solid, { project, slabs });
    return coated > 0 ? [{ id: solid.id, coated }] : [];
  });
  const [first] = glued;
  if (first === undefined) return [];
  const coated = glued.reduce((sum, one) => sum + one.coated, 0);
  return [
    {
      id: `adhesive/${first.id}`,
      severity: "warning",
      about: glued.length === 1 ? `solid/${first.id}` : "project",
      message: `${area(coated)} of foam is to be coated. ${safety.message}`,
      remedy: `${safety.remedy} ${countryRule(project.country).chemicals}`,
      source: reviewedSource(rules.adhesive.source, safety.reviewed),
    },
  ];
};
