import { CAP_HEIGHT, DESCENT, measureText, textStyles } from "./measure-text.ts";
import type { Box, TextInk } from "./types.ts";

/** The rectangle a line of text covers on the paper: capitals above, tails below. */
export function textBox(ink: TextInk): Box {
  const width = measureText(ink.text, ink.style);
  const { size } = textStyles[ink.style];
  const [x, y] = ink.at;
  const start = ink.anchor === "start" ? 0 : ink.anchor === "middle" ? -width / 2 : -width;
  const above = (CAP_HEIGHT / 2) * size;
  const below = (CAP_HEIGHT / 2 + DESCENT) * size;
  // Reading upwards: the start is at the bottom, the tops of the letters on the left.
  if (ink.isUpright)
    return { left: x - above, right: x + below, top: y - start - width, bottom: y - start };
  return { left: x + start, right: x + start + width, top: y - above, bottom: y + below };
}
