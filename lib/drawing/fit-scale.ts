import type { Mm, Ratio } from "../plane/types.ts";
import { boxOfInks } from "./boxes.ts";
import { findCollisions } from "./find-collisions.ts";
import type { FigureLimits, Picture } from "./types.ts";

/** Scales a ruler or a head can deal with: 1 to this many. @source ISO 5455, with the halves and sixths of inch rules */
const nicelyTo: readonly number[] = [
  1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 24, 25, 30, 40, 50, 60, 75, 100, 120, 150, 200,
  250, 300, 500,
];

/** A drawing whose longer side is shorter than this cannot be read: it needs more room. Our choice. */
const LEAST: Mm = 20;

export interface Fitted {
  readonly picture: Picture;
  readonly scale: Ratio;
  readonly note: string;
}

/**
 * Draw at the largest neat scale whose picture, labels and all, keeps within the limits. A scale a
 * little smaller is taken where only there every label finds a clear place.
 *
 * @param build draws at a scale (paper over real)
 * @param content real width and height, to skip scales that cannot fit
 */
export function fitScale(
  build: (scale: Ratio) => Picture,
  content: readonly [width: number, height: number],
  limits: FigureLimits,
): Fitted {
  const last = nicelyTo[nicelyTo.length - 1];
  let largest: Fitted | null = null;
  for (const to of nicelyTo) {
    if (content[0] / to > limits.width || content[1] / to > limits.height) continue;
    // Much smaller lines will not make room for labels of the same size.
    if (largest && largest.scale * to > 1.7) return largest;
    const picture = build(1 / to);
    const box = boxOfInks(picture.inks);
    const fits =
      box.right - box.left + 2 <= limits.width && box.bottom - box.top + 2 <= limits.height;
    if (!fits && to !== last) continue;
    const longer = Math.max(...content) / to;
    const isTiny = longer > 0 && longer < LEAST;
    const fitted: Fitted = {
      picture: isTiny ? withFault(picture, "Too small to read.") : picture,
      scale: 1 / to,
      note: `Scale 1 : ${to}`,
    };
    if (isTiny) return largest ?? fitted;
    if (findCollisions(picture.inks).length + picture.collisions.length === 0) return fitted;
    largest ??= fitted;
  }
  if (largest) return largest;
  return { picture: { inks: [], collisions: ["Too large to draw."] }, scale: 1, note: "" };
}

const withFault = ({ inks, collisions }: Picture, fault: string): Picture => ({
  inks,
  collisions: [...collisions, fault],
});
