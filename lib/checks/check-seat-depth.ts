import type { Mm } from "../plane/types.ts";
import { findSeat, hasBack } from "./find-seat.ts";
import type { Check } from "./types.ts";

/** Deepest seat on which most adults can lean back. */
const deepest: Mm = 430;

/** Seats with a back that are too deep for an adult to lean on it. */
export const checkSeatDepth: Check = ({ project: { audience }, solids, format: { length } }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    if (audience?.kind !== "adult" || seat === null || !hasBack(seat, solid)) return [];
    const depth = seat.max[1] - seat.min[1];
    if (depth <= deepest + 1) return [];
    return [
      {
        id: `seat-deep/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message: `The seat is ${length(depth)} deep. Beyond ${length(deepest)} many adults cannot lean back with bent knees.`,
        remedy: `Make the seat ${length(depth - deepest)} less deep, or add a loose cushion at the back.`,
        source:
          "Pheasant, Bodyspace (seat depth at most 430 mm), http://tbeech.blogspot.com/2010/10/anthropemetric-considerations.html",
      },
    ];
  });
