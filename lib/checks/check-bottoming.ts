import { findSeat } from "./find-seat.ts";
import { roughMass } from "./rough-mass.ts";
import { rules } from "./rules.ts";
import { seatUnderLoad } from "./seat-under-load.ts";
import { sitterFor } from "./sitter-for.ts";
import type { Check } from "./types.ts";

const rule = rules["bottoms-out"];

/** Seats so soft that the sitter feels what is underneath. */
export const checkBottoming: Check = ({ project, solids, format }) =>
  solids.flatMap((solid) => {
    const { audience } = project;
    const seat = findSeat(solid);
    if (audience === null || seat === null) return [];
    const sitter = sitterFor(audience);
    const loaded = seatUnderLoad(seat, { solid, project, sitter });
    if (loaded === null || loaded.share[0] * 100 <= rule.most) return [];
    return [
      {
        id: `bottoms-out/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message:
          `A sitter of ${roughMass(sitter.mass, { project, format })} presses the foam under the seat together by ${Math.round(loaded.share[0] * 100)} % or more. ` +
          `Beyond ${rule.most} % it is felt to the bottom.`,
        remedy: "Use firmer foam under the seat, or a firm layer below a soft one.",
        source: rule.source,
      },
    ];
  });
