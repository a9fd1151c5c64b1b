import type { Mm } from "../plane/types.ts";
import { boxOfInks, shiftInks } from "./boxes.ts";
import { flowBoxes } from "./flow-boxes.ts";
import type { Picture } from "./types.ts";

/** White kept free at the right, for the margin of the figure and wide lines. */
const SPARE: Mm = 3;

/** Several pictures as one, set in rows like words in a paragraph within a figure's width. */
export function flowPictures(pictures: readonly Picture[], width: Mm, gap: Mm): Picture {
  const boxes = pictures.map(({ inks }) => boxOfInks(inks));
  const shifts = flowBoxes(boxes, width - SPARE, gap);
  return {
    inks: pictures.flatMap(({ inks }, i) => shiftInks(inks, shifts[i] ?? [0, 0])),
    collisions: pictures.flatMap(({ collisions }) => collisions),
  };
}
