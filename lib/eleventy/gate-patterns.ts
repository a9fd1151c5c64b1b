import type { Patterns } from "../booklet/pattern-sheets.ts";
import { checkLengths } from "../booklet/sheet-marks.ts";
import type { Mm } from "../plane/types.ts";
import { gateCommon } from "./gate-common.ts";
import type { Box } from "./path-boxes.ts";
import type { PdfFacts } from "./read-pdf.ts";

/** How far a check line may be off. */
const lineTolerance: Mm = 0.1;
/** Printers leave up to this much blank. @source our choice, see sheetMargin */
const blankEdge: Mm = 10;

/** What is wrong with printed patterns: lost sheets, check lines off, ink where a printer leaves none. */
export function gatePatterns(facts: PdfFacts, { sheets, paper }: Patterns): readonly string[] {
  const counts =
    facts.pages.length === sheets.length
      ? []
      : [`${facts.pages.length} pages for ${sheets.length} sheets`];
  const perPage = facts.pages.flatMap(({ paths, pictures, width, height }, i) => [
    ...checkLengths.flatMap(({ length, label }) =>
      (["width", "height"] as const)
        .filter((way) => !paths.some((box) => isCheckLine(box, length, way)))
        .map(
          (way) =>
            `sheet ${i + 1}: its ${label} line ${way === "width" ? "along" : "up"} the page is missing or off`,
        ),
    ),
    ...paths
      .filter((box) => !isGround(box, width, height) && isOutside(box, width, height))
      .slice(0, 1)
      .map(() => `sheet ${i + 1}: something lies within ${blankEdge} mm of an edge`),
    ...(pictures > 0 ? [`sheet ${i + 1}: a drawing came out as a picture of dots`] : []),
  ]);
  return [...gateCommon(facts, paper), ...counts, ...perPage];
}

/** The white that a browser lays under a whole page. */
const isGround = (box: Box, width: Mm, height: Mm): boolean =>
  box.width > width - 1 && box.height > height - 1;

const isOutside = ({ left, low, width, height }: Box, pageWidth: Mm, pageHeight: Mm): boolean =>
  left < blankEdge ||
  low < blankEdge ||
  left + width > pageWidth - blankEdge ||
  low + height > pageHeight - blankEdge;

/** A check line is the only path of its length that is 3 mm across: its ticks. */
function isCheckLine(box: Box, length: Mm, way: "width" | "height"): boolean {
  const across = way === "width" ? box.height : box.width;
  return Math.abs(box[way] - length) <= lineTolerance && Math.abs(across - 3) <= lineTolerance;
}
