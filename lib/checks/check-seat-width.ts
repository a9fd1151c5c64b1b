import adults from "../../shared/tables/adults.json" with { type: "json" };
import sizes from "../../shared/tables/seat-sizes.json" with { type: "json" };
import type { Mm } from "../plane/types.ts";
import { thinnestSeat } from "./check-seat-height.ts";
import { findSeat } from "./find-seat.ts";
import { raisedFaces } from "./raised-faces.ts";
import { rules } from "./rules.ts";
import { sitterFor, type Sitter } from "./sitter-for.ts";
import type { Check } from "./types.ts";

const rule = rules["seat-narrow"];

/** Seats with no room for the hips, above all between two arms. */
export const checkSeatWidth: Check = ({ project: { audience }, solids, format: { length } }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    if (audience === null || seat === null || seat.height < thinnestSeat) return [];
    const arms = raisedFaces(seat, solid).filter(({ kind }) => kind === "arm");
    const isBetween =
      arms.some(({ corners }) => corners.every(([x]) => x <= seat.min[0] + 1)) &&
      arms.some(({ corners }) => corners.every(([x]) => x >= seat.max[0] - 1));
    const least = leastWidth(sitterFor(audience), isBetween);
    const width = seat.max[0] - seat.min[0];
    if (width >= least - 1) return [];
    return [
      {
        id: `seat-narrow/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message: `The seat is ${length(width)} wide${isBetween ? " between its arms" : ""}, and ${length(least)} is advised for the sitter.`,
        remedy: `Make the seat ${length(least - width)} wider${isBetween ? ", or leave out an arm" : ""}.`,
        source: rule.source,
      },
    ];
  });

function leastWidth({ stature, years }: Sitter, isBetween: boolean): Mm {
  const row =
    sizes.rows.find(({ stature: [from = 0, to = 0] }) => stature >= from && stature <= to) ??
    sizes.rows.at(-1);
  const width = years === null ? (sizes.rows.at(-1)?.width ?? 0) : (row?.width ?? 0);
  if (!isBetween || years !== null) return width;
  const hips = adults.rows
    .filter(({ source }) => source === "ansur")
    .map(({ hipBreadth }) => hipBreadth?.[2] ?? 0);
  return rule.share * Math.max(...hips);
}
