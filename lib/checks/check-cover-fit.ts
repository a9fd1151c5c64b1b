import { replacementFoam } from "../estimate/replacement-foam.ts";
import type { Mm } from "../plane/types.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const tight = rules["cover-tight"];
const loose = rules["cover-loose"];

/** A cover much smaller than its foam, or larger than batting fills. */
export const checkCoverFit: Check = ({ covers, format: { length, sizes } }) =>
  covers.flatMap(({ solid, foamSize, coverSize }) => {
    const larger = coverSize.map((size, axis) => size - foamSize[axis]!);
    const [least, most] = [Math.min(...larger), Math.max(...larger)];
    const about = `solid/${solid}`;
    if (least < -tight.most - tolerance)
      return [
        {
          id: `cover-tight/${solid}`,
          severity: "note" as const,
          about,
          message: `The ${solid} cover is up to ${length(-least)} smaller than its foam. More than ${length(tight.most)} strains seams and rounds the corners.`,
          remedy: `Make it ${length(tight.usual)} smaller along width and depth, and as thick as the foam.`,
          source: tight.source,
        },
      ];
    if (most > 2 * loose.wrap + tolerance)
      return [
        {
          id: `cover-loose/${solid}`,
          severity: "note" as const,
          about,
          message: `The ${solid} cover is up to ${length(most)} larger than its foam. Batting is commonly ${length(loose.thinWrap)} to ${length(loose.wrap)} thick, so one layer all round leaves it slack.`,
          remedy: `Make the cover smaller, or cut foam of ${sizes(replacementFoam(coverSize))} for it.`,
          source: loose.source,
        },
      ];
    return [];
  });

/** Sizes of a cover come out of arithmetic. */
const tolerance: Mm = 0.01;
