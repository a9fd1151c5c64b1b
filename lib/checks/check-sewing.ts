import { clothClass, heaviestCloth, stitchFor } from "../estimate/cloth-class.ts";
import { seamStrength } from "../estimate/seam-strength.ts";
import { stitchesPerInch } from "../estimate/stitches-per-inch.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const rule = rules["sewing-setup"];

/** Needle, thread and stitch for the heaviest cloth, and what such a seam holds. */
export const checkSewing: Check = (work) => {
  const cloth = heaviestCloth(work);
  const kind = cloth === null ? null : clothClass(cloth.weight ?? 0);
  if (cloth === null || kind === null) return [];
  const stitch = stitchFor(work);
  const holds = seamStrength(stitch, kind.threadStrength);
  const margin = Number((holds / rule.asked).toFixed(1));
  return [
    {
      id: `sewing-setup/${cloth.id}`,
      severity: "note",
      about: `stock/${cloth.id}`,
      message:
        `${cloth.label.charAt(0).toUpperCase()}${cloth.label.slice(1)} of ${Math.round(cloth.weight ?? 0)} g/m² is ${kind.name} cloth: needle ${kind.needle}; thread ${kind.thread}. ` +
        `At ${stitch} mm, ${Math.round(stitchesPerInch(stitch))} stitches to the inch, an inch of seam holds about ${Math.round(holds)} N (${Math.round(holds / 4.448)} lb), ${margin} times what is commonly asked of furnishing cloth.`,
      remedy:
        "Sew twice where people pull: at handles, at the ends of the zip, at corners. Try stitch and needle on scraps.",
      source: rule.source,
    },
  ];
};
