import type { Mm } from "../plane/types.ts";
import { findSeat, hasBack } from "./find-seat.ts";
import { seatFor } from "./seat-for.ts";
import type { Check } from "./types.ts";

/** Below this a solid is a pad that lies on something else, and not a seat. Our choice. */
const thinnestSeat: Mm = 120;

/** Seat heights that do not suit the sitter. Advice only: children differ, and foam sinks. */
export const checkSeatHeight: Check = ({ project: { audience }, solids, format: { length } }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    if (audience === null || seat === null || seat.height < thinnestSeat) return [];
    const suits = seatFor(audience);
    const isHigh = seat.height > suits.highest + 1;
    // A stool or pouf is low on purpose.
    const isLow = seat.height < suits.lowest - 1 && hasBack(seat, solid);
    if (!isHigh && !isLow) return [];
    const difference = isHigh ? seat.height - suits.highest : suits.lowest - seat.height;
    return [
      {
        id: `${isHigh ? "seat-high" : "seat-low"}/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message:
          `The seat is ${length(seat.height)} high, ${length(difference)} ${isHigh ? "above" : "below"} what is advised ` +
          `for ${suits.basis(length)}: ${length(suits.lowest)} to ${length(suits.highest)}.`,
        remedy: isHigh
          ? "Measure the sitter from the floor to the back of the knee, and make the seat no higher. Foam sinks when sat upon."
          : "Measure the sitter from the floor to the back of the knee. A lower seat is fine for lounging on the floor.",
        source: suits.source,
      },
    ];
  });
