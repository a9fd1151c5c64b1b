import { checkLengths } from "../booklet/sheet-marks.ts";
import type { Booklet } from "../booklet/pages.ts";
import type { Paper } from "../booklet/paper.ts";
import type { Patterns } from "../booklet/pattern-sheets.ts";
import type { Mm } from "../plane/types.ts";
import type { PathBox, PdfFacts } from "./read-pdf.ts";

/** How far a page or a check line may be off. Chromium writes A4 as 209.9 × 297.0 mm. */
const pageTolerance: Mm = 0.2;
const lineTolerance: Mm = 0.1;
/** Printers leave up to this much blank. @source our choice, see sheetMargin */
const blankEdge: Mm = 10;

/** What is wrong with a printed booklet: a page of another size, a title or a step that is not in it. */
export function gateBooklet(facts: PdfFacts, booklet: Booklet, paper: Paper): readonly string[] {
  const printed = squash(facts.pages.map(({ text }) => text).join("\n"));
  const wanted = booklet.pages.flatMap((page) => [
    page.title,
    ...(page.kind === "steps"
      ? page.steps.flatMap(({ title, actions }) => [title, ...actions])
      : []),
    ...(page.kind === "materials" ? page.table.rows.map(({ cells }) => cells[0] ?? "") : []),
  ]);
  return [
    ...gateCommon(facts, paper),
    ...wanted
      .filter((text) => !printed.includes(squash(text)))
      .map((text) => `"${text}" is not in the print`),
  ];
}

/** What is wrong with printed patterns: lost sheets, check lines off, ink where a printer leaves none. */
export function gatePatterns(facts: PdfFacts, { sheets, paper }: Patterns): readonly string[] {
  const counts =
    facts.pages.length === sheets.length
      ? []
      : [`${facts.pages.length} pages for ${sheets.length} sheets`];
  const perPage = facts.pages.flatMap(({ paths, width, height }, i) => [
    ...checkLengths.flatMap(({ length, label }) =>
      (["width", "height"] as const)
        .filter((way) => !paths.some((box) => isCheckLine(box, length, way)))
        .map(
          (way) =>
            `sheet ${i + 1}: its ${label} line ${way === "width" ? "along" : "up"} the page is missing or off`,
        ),
    ),
    ...paths
      .filter((box) => box.width < width - 1 && isOutside(box, width, height))
      .slice(0, 1)
      .map(() => `sheet ${i + 1}: something lies within ${blankEdge} mm of an edge`),
  ]);
  return [...gateCommon(facts, paper), ...counts, ...perPage];
}

const isOutside = ({ left, low, width, height }: PathBox, pageWidth: Mm, pageHeight: Mm): boolean =>
  left < blankEdge ||
  low < blankEdge ||
  left + width > pageWidth - blankEdge ||
  low + height > pageHeight - blankEdge;

/** A check line is the only path of its length that is 3 mm across: its ticks. */
function isCheckLine(box: PathBox, length: Mm, way: "width" | "height"): boolean {
  const across = way === "width" ? box.height : box.width;
  return Math.abs(box[way] - length) <= lineTolerance && Math.abs(across - 3) <= lineTolerance;
}

function gateCommon(facts: PdfFacts, { width, height, label }: Paper): readonly string[] {
  const wrong = facts.pages.findIndex(
    (page) =>
      Math.abs(page.width - width) > pageTolerance ||
      Math.abs(page.height - height) > pageTolerance,
  );
  return [
    ...(wrong < 0 ? [] : [`page ${wrong + 1} is not ${label}`]),
    ...(facts.isTagged ? [] : ["it is not tagged for screen readers"]),
    ...(facts.language === null ? ["it does not name its language"] : []),
    ...(facts.title === null || facts.title === "" ? ["it has no title"] : []),
  ];
}

/** Letters and digits only: line ends, ligatures and the shape of fractions do not matter. */
const squash = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .toLowerCase();
