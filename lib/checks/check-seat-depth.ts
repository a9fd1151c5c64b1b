import type { Project } from "../project/types.ts";
import type { Mm } from "../plane/types.ts";
import { findSeat, hasBack } from "./find-seat.ts";
import { roughLength } from "./rough-length.ts";
import { rules } from "./rules.ts";
import { seatDepth } from "./seat-depth.ts";
import { sitterFor } from "./sitter-for.ts";
import type { Check } from "./types.ts";

const rule = rules["seat-deep"];

/** Seats with a back that are too deep to lean on it with bent knees. */
export const checkSeatDepth: Check = ({ project, solids, format }) =>
  solids.flatMap((solid) => {
    const { audience } = project;
    const rough = (size: Mm) => roughLength(size, { project, format });
    const seat = findSeat(solid);
    if (audience === null || seat === null || !hasBack(seat, solid)) return [];
    const deepest = deepestFor(audience);
    const depth = seatDepth(seat, solid);
    if (depth <= deepest + 1) return [];
    const who = sitterFor(audience).years === null ? "many adults" : "such a child";
    return [
      {
        id: `seat-deep/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message: `The seat is ${format.length(depth)} deep. Beyond ${rough(deepest)} ${who} cannot lean back with bent knees.`,
        remedy: `Make the seat ${rough(depth - deepest)} less deep, or put a loose cushion so thick at the back. For lying and lounging it is right as it is.`,
        source: rule.source,
      },
    ];
  });

function deepestFor(audience: NonNullable<Project["audience"]>): Mm {
  const { years, stature } = sitterFor(audience);
  return years === null ? rule.adult : rule.share * stature;
}
