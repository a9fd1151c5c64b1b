import type { Mm } from "../plane/types.ts";
import { inMillimetres } from "./in-millimetres.ts";
import type { Check } from "./types.ts";

/** Two edges closer than this are equal with a needle in hand. */
const equal: Mm = 0.5;

/** Seams that join edges of unequal length. */
export const checkEasedSeams: Check = ({ covers, format: { length } }) =>
  covers.flatMap((cover) =>
    cover.seams.flatMap((seam) => {
      const [first, second] = seam.length;
      const difference = Math.abs(first - second);
      if (difference <= equal) return [];
      const [longer, shorter] = first > second ? seam.panels : seam.panels.toReversed();
      return [
        {
          id: `eased/${cover.solid}/${seam.id}`,
          severity: "note",
          about: `seam/${cover.solid}/${seam.id}`,
          message:
            `In seam ${seam.id} the edge of ${longer} is ${inMillimetres(difference)} longer than that of ${shorter}: ` +
            `${length(Math.max(first, second))} against ${length(Math.min(first, second))}.`,
          remedy: `Pin the ends and the middle first, and sew with ${longer} underneath so that the feed eases it in.`,
          source: "common practice, no source",
        },
      ];
    }),
  );
