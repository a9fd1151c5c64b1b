import type { Mm } from "../plane/types.ts";
import { boxOfInks, growBox, shiftInks } from "./boxes.ts";
import { findCollisions } from "./find-collisions.ts";
import type { Figure, FigureLimits, Picture } from "./types.ts";
import { writeSvg } from "./write-svg.ts";

export interface FigureWords {
  readonly id: string;
  readonly title: string;
  readonly alt: string;
  readonly scale: string;
  readonly drawn?: Mm;
}

/** White round the ink, so that wide lines are not cut at the edge. */
const MARGIN = 1;

/** Frame a picture tightly and write it. Reports text that meets text or lines, and over-size. */
export function finishFigure(words: FigureWords, picture: Picture, limits: FigureLimits): Figure {
  const box = growBox(boxOfInks(picture.inks), MARGIN);
  const inks = shiftInks(picture.inks, [-box.left, -box.top]);
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const collisions = [...picture.collisions, ...findCollisions(inks)];
  if (width > limits.width + 0.01) collisions.push(`Wider than ${limits.width} mm.`);
  if (height > limits.height + 0.01) collisions.push(`Higher than ${limits.height} mm.`);
  const svg = writeSvg({ ...words, width, height }, inks);
  return { ...words, svg, width, height, collisions };
}
