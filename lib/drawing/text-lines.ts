import type { Point } from "../plane/types.ts";
import { LINE_SPACING, textStyles } from "./measure-text.ts";
import type { Anchor, TextInk, TextStyle } from "./types.ts";

/** Lines of text stacked about a point: `at` is the middle of the stack's height. */
export function textLines(
  lines: readonly string[],
  at: Point,
  { style, anchor }: { readonly style: TextStyle; readonly anchor: Anchor },
): TextInk[] {
  const step = textStyles[style].size * LINE_SPACING;
  return lines.map((text, index) => ({
    kind: "text",
    style,
    text,
    anchor,
    isUpright: false,
    at: [at[0], at[1] + (index - (lines.length - 1) / 2) * step],
  }));
}
