import safety from "../../shared/safety/adhesive.json" with { type: "json" };
import type { Check } from "./types.ts";

/** Hazards of foam adhesive, for every solid that is glued up. */
export const checkAdhesive: Check = ({ solids, format: { area } }) =>
  solids.flatMap(({ id, joints }) => {
    const glued = joints.reduce((sum, joint) => sum + joint.area, 0);
    if (glued <= 0) return [];
    return [
      {
        id: `adhesive/${id}`,
        severity: "warning",
        about: `step/glue-${id}`,
        message: `${area(2 * glued)} of foam is to be coated. ${safety.message}`,
        remedy: safety.remedy,
        source: `${safety.source} (wording reviewed ${safety.reviewed})`,
      },
    ];
  });
