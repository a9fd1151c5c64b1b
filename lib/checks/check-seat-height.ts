import type { Mm } from "../plane/types.ts";
import { findSeat, hasBack } from "./find-seat.ts";
import { seatFor } from "./seat-for.ts";
import { seatUnderLoad } from "./seat-under-load.ts";
import { sitterFor } from "./sitter-for.ts";
import type { Check } from "./types.ts";

/** Below this a solid is a pad that lies on something else, and not a seat. Our choice. */
export const thinnestSeat: Mm = 120;

/**
 * Seat heights that do not suit the sitter, with the seat as far down as the foam lets it. Advice
 * only: children differ.
 */
export const checkSeatHeight: Check = ({ project, solids, format: { length } }) =>
  solids.flatMap((solid) => {
    const { audience } = project;
    const seat = findSeat(solid);
    if (audience === null || seat === null || seat.height < thinnestSeat) return [];
    const suits = seatFor(audience);
    const loaded = seatUnderLoad(seat, { solid, project, sitter: sitterFor(audience) });
    const [highest, lowest] = loaded?.height ?? [seat.height, seat.height];
    const isHigh = highest > suits.highest + 1;
    // A stool or pouf is low on purpose.
    const isLow = lowest < suits.lowest - 1 && hasBack(seat, solid);
    if (!isHigh && !isLow) return [];
    const difference = isHigh ? highest - suits.highest : suits.lowest - lowest;
    const sunk =
      loaded === null ? "" : ` and about ${length(isHigh ? highest : lowest)} under the sitter`;
    return [
      {
        id: `${isHigh ? "seat-high" : "seat-low"}/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message:
          `The seat is ${length(seat.height)} high${sunk}, ${length(difference)} ${isHigh ? "above" : "below"} what is advised ` +
          `for ${suits.basis(length)}: ${length(suits.lowest)} to ${length(suits.highest)}.`,
        remedy: isHigh
          ? `Measure the sitter from the floor to the back of the knee, and make the seat no higher.${loaded === null ? " Foam sinks when sat upon." : ""}`
          : "Measure the sitter from the floor to the back of the knee. A lower seat is fine for lounging on the floor.",
        source: suits.source,
      },
    ];
  });
