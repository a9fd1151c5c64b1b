import { paperNumber } from "./paper-number.ts";
import type { Box, Ink, SheetPaper } from "./types.ts";
import { escapeXml } from "./escape-xml.ts";
import { figureKey, writeInks } from "./write-svg.ts";

export interface SheetContent {
  readonly id: string;
  readonly title: string;
  readonly alt: string;
  readonly paper: SheetPaper;
  readonly window: Box;
  /** Full-size lines, cut off at the window. */
  readonly inside: readonly Ink[];
  /** Frame, words and check lines. */
  readonly over: readonly Ink[];
}

/** A page-sized `<svg>`; lines are cut off by a clip path, which stays vector in print. */
export function writeSheet(content: SheetContent): string {
  const { id, title, alt, paper, window, inside, over } = content;
  const key = figureKey(id);
  const [width, height] = [paperNumber(paper.width), paperNumber(paper.height)];
  const clip = [
    `x="${paperNumber(window.left)}"`,
    `y="${paperNumber(window.top)}"`,
    `width="${paperNumber(window.right - window.left)}"`,
    `height="${paperNumber(window.bottom - window.top)}"`,
  ].join(" ");
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" id="${key}" class="figure-sheet" width="${width}mm" ` +
    `height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" ` +
    `aria-labelledby="${key}-title" aria-describedby="${key}-desc">` +
    `<title id="${key}-title">${escapeXml(title)}</title>` +
    `<desc id="${key}-desc">${escapeXml(alt)}</desc>` +
    `<clipPath id="${key}-window"><rect ${clip}/></clipPath>` +
    `<g clip-path="url(#${key}-window)">${writeInks(inside)}</g>${writeInks(over)}</svg>`
  );
}
