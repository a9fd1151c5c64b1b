import type { Paper } from "../booklet/paper.ts";
import type { Mm } from "../plane/types.ts";
import type { PdfFacts, Type } from "./read-pdf.ts";

/** How far a page may be off: Chromium sizes pages in whole pixels of 1/96 in, 0.265 mm. */
const pageTolerance: Mm = 0.27;
/** The one family that every page is set in; a browser puts another in for letters it lacks. */
const family = /SourceSans3/;

/** What is wrong with any print: another size of page, no tags, no language, no title, a strange font. */
export function gateCommon(facts: PdfFacts, paper: Paper): readonly string[] {
  return [
    ...gateSize(facts, paper),
    ...(facts.isTagged ? [] : ["it is not tagged for screen readers"]),
    ...(facts.language === null ? ["it does not name its language"] : []),
    ...(facts.title === null || facts.title === "" ? ["it has no title"] : []),
    ...facts.pages.flatMap(({ type }, i) => strangeLetters(type, i + 1)),
  ];
}

/** A page of another size than was asked for. */
export function gateSize(
  { pages }: PdfFacts,
  { width, height, label }: Pick<Paper, "width" | "height" | "label">,
): readonly string[] {
  const wrong = pages.findIndex(
    (page) =>
      Math.abs(page.width - width) > pageTolerance ||
      Math.abs(page.height - height) > pageTolerance,
  );
  if (wrong < 0) return [];
  const found = pages[wrong]!;
  const size = `${found.width.toFixed(1)} × ${found.height.toFixed(1)} mm`;
  return [`page ${wrong + 1} is not ${label}: it measures ${size}`];
}

/** Letters that the booklet's font does not have, so that the browser took them from another. */
function strangeLetters(type: readonly Type[], page: number): readonly string[] {
  const strange = type.filter(({ font }) => !family.test(font));
  const fonts = [...new Set(strange.map(({ font }) => font))];
  return fonts.map((font) => {
    const letters = [
      ...new Set(strange.flatMap((each) => (each.font === font ? [...each.text] : []))),
    ];
    const codes = letters
      .slice(0, 4)
      .map((letter) => `"${letter}" (${codePoint(letter)})`)
      .join(", ");
    return `page ${page}: ${codes} is set in ${font}: the booklet's font has no such letter, write it another way`;
  });
}

const codePoint = (letter: string): string =>
  `U+${letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;

/** Letters and digits only: line ends, ligatures and the shape of fractions do not matter. */
export const squash = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .toLowerCase();
