import type { Mm } from "../plane/types.ts";
import { asciiWidths, fractionDigitWidth, otherWidths, unknownWidth } from "./font-widths.ts";
import { textRuns } from "./text-runs.ts";
import type { TextStyle } from "./types.ts";

/**
 * Type size and weight of each style. Capitals of Source Sans 3 are 0.66 of the size: 2.6 mm.
 *
 * @source ISO 3098-1: lettering of 2.5 mm is the smallest for drawings
 */
export const textStyles: Readonly<Record<TextStyle, { size: Mm; weight: "regular" | "semibold" }>> =
  {
    label: { size: 4, weight: "regular" },
    name: { size: 4, weight: "semibold" },
    letter: { size: 5, weight: "semibold" },
  };

/** Height of capitals as a share of the type size. @source Source Sans 3, OS/2 sCapHeight 660 of 1000 */
export const CAP_HEIGHT = 0.66;
/** How far letters such as g and y hang below the line, as a share of the type size; drawn extent of `g`. */
export const DESCENT = 0.21;
/** Distance between lines as a share of the type size. */
export const LINE_SPACING = 1.2;

/** Width of one line of text on the paper. */
export function measureText(text: string, style: TextStyle): Mm {
  const { size, weight } = textStyles[style];
  const column = weight === "regular" ? 0 : 1;
  let thousandths = 0;
  for (const run of textRuns(text)) {
    for (const character of run.text) {
      if (run.isFraction && character !== "⁄") thousandths += fractionDigitWidth[column];
      else thousandths += letterWidth(character, weight, column);
    }
  }
  return (thousandths * size) / 1000;
}

function letterWidth(character: string, weight: "regular" | "semibold", column: 0 | 1): number {
  const known = asciiWidths[weight][(character.codePointAt(0) ?? 0) - 32];
  return known ?? otherWidths[character]?.[column] ?? unknownWidth;
}
