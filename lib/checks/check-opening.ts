import type { Check } from "./types.ts";

/** An opening through which the foam would not go. */
export const checkOpening: Check = ({ covers, format: { length } }) =>
  covers.flatMap(({ solid, opening }) => {
    if (opening === null || opening.fits) return [];
    return [
      {
        id: `opening-small/${solid}`,
        severity: "note",
        about: `solid/${solid}`,
        message:
          `The opening spans a girth of ${length(opening.girth)}. The foam is ${length(opening.needed)} round at its ` +
          `smallest, so it would have to be squeezed by ${Math.round(opening.give * 100)} %, which is too much.`,
        remedy: "Leave one more seam open next to it, or name a longer edge under `open`.",
        source: "our choice: how far foam may be squeezed; common practice, no source",
      },
    ];
  });
