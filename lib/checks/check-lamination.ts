import { columnUnder, hardnessOf } from "./seat-under-load.ts";
import { findSeat } from "./find-seat.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const rule = rules["lamination-order"];

/** A soft block under a firm one below the seat: the firm one belongs at the bottom. */
export const checkLamination: Check = ({ project, solids }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    if (seat === null) return [];
    const column = columnUnder(seat, solid);
    return column.flatMap((upper, index) => {
      const lower = column[index + 1];
      const firm = hardnessOf(upper.foam, project);
      const soft = lower === undefined ? null : hardnessOf(lower.foam, project);
      if (lower === undefined || firm === null || soft === null) return [];
      if (soft > firm * (1 - rule.share / 100)) return [];
      return [
        {
          id: `lamination-order/${solid.id}/${upper.id}`,
          severity: "note" as const,
          about: `solid/${solid.id}`,
          message: `Block ${upper.id} (${Math.round(firm)} N) lies on the softer block ${lower.id} (${Math.round(soft)} N): the seat feels hard at first, then gives way.`,
          remedy: "Swap the foams, so that the firm one is below and the soft one on top.",
          source: rule.source,
        },
      ];
    });
  });
