import { inMillimetres } from "./in-millimetres.ts";
import type { Check } from "./types.ts";

/** Covers whose panels do not fold back to the solid. */
export const checkRefold: Check = ({ covers }) =>
  covers
    .filter(({ refolds }) => !refolds.ok)
    .map(({ solid, refolds }) => ({
      id: `refold/${solid}`,
      severity: "note",
      about: `solid/${solid}`,
      message: `Folded up again, the panels of ${solid} miss the foam by up to ${inMillimetres(refolds.worst)}.`,
      remedy:
        "Do not cut this cover. Name its panels yourself under `panels`, and report the project file as a fault.",
      source: "computed by folding the panels back",
    }));
