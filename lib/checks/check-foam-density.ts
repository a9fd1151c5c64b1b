import { foamGrade } from "../estimate/foam-grade.ts";
import { densityInPoundsPerCubicFoot } from "../estimate/pounds-per-cubic-foot.ts";
import type { SlabStock } from "../project/types.ts";
import { findSeat, seatBlocks } from "./find-seat.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const rule = rules["density-low"];
/** The least density with the hardness of an ordinary seat, 35 lb. @source as "foam-soft" in the table of checks */
const seatGrade = foamGrade(rule.least, 155.7);

/** Foam under the seat that is lighter than the trade advises, or of unknown density. */
export const checkFoamDensity: Check = ({ project, solids }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    if (seat === null) return [];
    const under = seatBlocks(seat);
    const foams = new Set(
      solid.blocks.filter((block) => under.includes(block.id)).map((block) => block.foam),
    );
    return project.stock
      .filter((stock): stock is SlabStock => stock.kind === "slab" && foams.has(stock.id))
      .flatMap((slab) => {
        const id = `/${solid.id}/${slab.id}`;
        const about = `stock/${slab.id}`;
        if (slab.density === null) {
          return [
            {
              id: `density-unknown${id}`,
              severity: "note" as const,
              about,
              message: `No density was given for ${slab.label}, so neither its mass nor its use as a seat can be judged.`,
              remedy: `Ask the seller. Foam to sit on wants at least ${rule.least} kg/m³ (${pounds(rule.least)}), sold in America by numbers such as ${seatGrade}.`,
              source: rule.source,
            },
          ];
        }
        if (slab.density >= rule.least) return [];
        return [
          {
            id: `density-low${id}`,
            severity: "note" as const,
            about,
            message:
              `${slab.label} has ${Number(slab.density.toFixed(1))} kg/m³ (${pounds(slab.density)}). Under a seat, foam ` +
              `below ${rule.least} kg/m³ (${pounds(rule.least)}) goes flat early.`,
            remedy: `Keep it for backs, or use ${rule.least} kg/m³ and for daily use ${rule.daily} kg/m³ or more.`,
            source: rule.source,
          },
        ];
      });
  });

function pounds(density: number): string {
  return `${densityInPoundsPerCubicFoot(density).toFixed(1)} lb/ft³`;
}
