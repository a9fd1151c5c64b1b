import type { Booklet, BookletPage, Row, Table } from "../booklet/pages.ts";
import type { Paper } from "../booklet/paper.ts";
import type { Figure } from "../drawing/types.ts";
import { flowText, gateBox } from "./gate-box.ts";
import { gateCommon, squash } from "./gate-common.ts";
import type { PdfFacts } from "./read-pdf.ts";

/** Letters this much under the least size are the printer's rounding. */
const typeTolerance = 0.05;

/**
 * What is wrong with a printed booklet: a page of another size; a title, a step, a row or a figure that
 * is not in it; words or lines outside the margins; type too small for its edition; a picture of dots
 * where a line drawing was meant. Needs facts read with details.
 */
export function gateBooklet(
  facts: PdfFacts,
  booklet: Booklet,
  { paper, leastType }: { readonly paper: Paper; readonly leastType: number | null },
): readonly string[] {
  const printed = squash(facts.pages.map((page) => flowText(page, booklet)).join("\n"));
  const figures = new Set(facts.pages.flatMap((page) => page.figures.map(squash)));
  const isPrinted = (text: string): boolean => printed.includes(squash(text));
  return [
    ...gateCommon(facts, paper),
    ...gateBox(facts, booklet),
    ...booklet.pages
      .flatMap(wordsOf)
      .filter((text) => !isPrinted(text))
      .map((text) => `"${text}" is not in the print`),
    ...booklet.pages
      .flatMap((page) => tablesIn(page).flatMap((table) => table.rows.map((row) => [table, row])))
      .filter(([table, row]) => !rowTexts(table as Table, row as Row).some(isPrinted))
      .map(([, row]) => `the row "${(row as Row).cells.join(" | ")}" is not in the print`),
    ...booklet.pages
      .flatMap((page) => figuresIn(page))
      .filter(({ title, alt }) => ![...figures].some((each) => isOf(each, title, alt)))
      .map(({ title }) => `the figure "${title}" is not in the print`),
    ...gatePictures(facts, booklet),
    ...(leastType === null ? [] : gateType(facts, leastType, labelsOf(booklet))),
  ];
}

/** A figure's tag says its title or its words. */
const isOf = (tag: string, title: string, alt: string): boolean =>
  tag !== "" && (tag.includes(squash(title)) || tag.includes(squash(alt)));

/** Everything of a page that has to be found in print again. */
function wordsOf(page: BookletPage): readonly string[] {
  const steps = page.kind === "steps" || page.kind === "lesson" ? page.steps : [];
  return [
    page.title,
    ...steps.flatMap(({ title, actions, check }) => [
      title,
      ...actions,
      ...(check === null ? [] : [check]),
    ]),
    ...(page.kind === "worksheet"
      ? page.tasks.flatMap(({ ask, answer }) => [ask, ...(answer === null ? [] : [answer])])
      : []),
  ];
}

/** A row as it stands in a table, and as it stands in large print: each cell after the head of its column. */
const rowTexts = ({ columns }: Table, { cells }: Row): readonly string[] => [
  cells.join(""),
  cells.map((cell, i) => (i === 0 || cell === "" ? cell : `${columns[i]!.title}${cell}`)).join(""),
];

const isTable = (value: object): value is Table => "rows" in value && "columns" in value;
const isFigure = (value: object): value is Figure => "svg" in value && "alt" in value;

const tablesIn = (page: object): readonly Table[] => partsOf(page, isTable);
const figuresIn = (page: object): readonly Figure[] => partsOf(page, isFigure);

/** Every part of a page that is of a kind, however deep it lies. */
function partsOf<T extends object>(
  value: object,
  isWanted: (value: object) => value is T,
): readonly T[] {
  if (isWanted(value)) return [value];
  return Object.values(value).flatMap((each: unknown) =>
    typeof each === "object" && each !== null ? partsOf(each, isWanted) : [],
  );
}

/** The photo of what was made is the one picture of dots a booklet may hold. */
function gatePictures({ pages }: PdfFacts, booklet: Booklet): readonly string[] {
  const hasPhoto = booklet.pages.some((page) => page.kind === "record" && page.photo !== null);
  const found = pages.flatMap(({ pictures }, i) =>
    pictures > 0 ? [{ pictures, page: i + 1 }] : [],
  );
  const count = found.reduce((sum, { pictures }) => sum + pictures, 0);
  if (count <= (hasPhoto ? 1 : 0)) return [];
  return [`page ${found[0]!.page}: a drawing came out as a picture of dots, not as lines`];
}

/**
 * A label that finds no clear place in full size may be smaller.
 * @source reprographics practice: 8 pt; where 18 pt are asked, UKAAF clear print: 12 pt
 */
const leastLabel = (asked: number): number => (asked > 12 ? 12 : 8);

/** Text of a drawing without its tags, marks of XML as the letters they stand for. */
const plainText = (svg: string): string =>
  svg
    .replace(/<[^>]+>/g, "")
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replace(/&(?:amp|lt|gt|quot|apos);/g, "");

/** Words on the figures of a booklet. */
function labelsOf({ pages }: Booklet): ReadonlySet<string> {
  const texts = pages
    .flatMap(figuresIn)
    .flatMap(({ svg }) => [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map((match) => match[1]!));
  return new Set(texts.map((text) => squash(plainText(text))));
}

/** Whether a text is a label, or labels that stand in a line and were read as one. */
const isMadeOf = (text: string, labels: ReadonlySet<string>): boolean =>
  labels.has(text) ||
  [...labels].some(
    (label) => label !== "" && text.startsWith(label) && isMadeOf(text.slice(label.length), labels),
  );

function gateType(
  { pages }: PdfFacts,
  asked: number,
  labels: ReadonlySet<string>,
): readonly string[] {
  return pages.flatMap(({ type }, i) => {
    const leastOf = (text: string): number =>
      isMadeOf(squash(text), labels) ? Math.min(asked, leastLabel(asked)) : asked;
    const small = type.find(({ text, points }) => points < leastOf(text) - typeTolerance);
    if (small === undefined) return [];
    return [
      `page ${i + 1}: "${small.text}" is set in ${small.points.toFixed(1)} pt, less than ${leastOf(small.text)} pt`,
    ];
  });
}
