import { densityInPoundsPerCubicFoot } from "../estimate/pounds-per-cubic-foot.ts";
import type { SlabStock } from "../project/types.ts";
import { findSeat, seatBlocks } from "./find-seat.ts";
import type { Check } from "./types.ts";

/**
 * Least density of foam to sit on, in kg per cubic metre, and for daily use.
 *
 * @source trade minimum 1.8 lb/ft³ (28.8), http://www.blhcollection.com/understanding-foam.html;
 * 30 to 35, foamstechnology.com: the safer of the two
 */
const leastForSeat = 30;
const leastForDailyUse = 35;
const source =
  "foamstechnology.com (30 to 35 kg/m³) and BLH Collection, Understanding foam (1.8 lb/ft³), http://www.blhcollection.com/understanding-foam.html";

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
              remedy: `Ask the seller. Foam to sit on wants at least ${leastForSeat} kg/m³ (${pounds(leastForSeat)}).`,
              source,
            },
          ];
        }
        if (slab.density >= leastForSeat) return [];
        return [
          {
            id: `density-low${id}`,
            severity: "note" as const,
            about,
            message:
              `${slab.label} has ${Number(slab.density.toFixed(1))} kg/m³ (${pounds(slab.density)}). Under a seat, foam ` +
              `below ${leastForSeat} kg/m³ (${pounds(leastForSeat)}) goes flat early.`,
            remedy: `Keep it for backs, or use ${leastForSeat} kg/m³ and for daily use ${leastForDailyUse} kg/m³ or more.`,
            source,
          },
        ];
      });
  });

function pounds(density: number): string {
  return `${densityInPoundsPerCubicFoot(density).toFixed(1)} lb/ft³`;
}
