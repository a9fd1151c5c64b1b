import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { TextItem } from "pdfjs-dist/types/src/display/api.js";
import type { Count, Mm } from "../plane/types.ts";
import { boxOf, pathBoxes } from "./path-boxes.ts";
import type { Box, Matrix, PathBox } from "./path-boxes.ts";

const mmPerPoint = 25.4 / 72;

export interface PdfFacts {
  readonly title: string | null;
  readonly author: string | null;
  readonly language: string | null;
  readonly isTagged: boolean;
  readonly outline: readonly string[];
  readonly pages: readonly PdfPage[];
}

export interface PdfPage {
  readonly width: Mm;
  readonly height: Mm;
  readonly text: string;
  /** Sizes of the boxes round each drawn path, as printed. */
  readonly paths: readonly PathBox[];
  /** Pictures made of dots. */
  readonly pictures: Count;
  /** What the tags say in the place of each figure. */
  readonly figures: readonly string[];
  /** Text by the name of its font, each stretch with its size in points. */
  readonly type: readonly Type[];
}

/** A stretch of text and the box it fills, from its foot to the top of its capitals. */
export interface Type extends Box {
  readonly font: string;
  readonly text: string;
  readonly points: number;
}

/** What stands in a PDF, read back from its bytes. All but sizes and words is left out unless asked for. */
export async function readPdf(
  bytes: Uint8Array,
  { withDetails = false }: { readonly withDetails?: boolean } = {},
): Promise<PdfFacts> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  try {
    const { info } = await document.getMetadata();
    const known = info as { Title?: string; Author?: string; Language?: string };
    const marks = await document.getMarkInfo();
    const outline = (await document.getOutline()) ?? [];
    const pages: PdfPage[] = [];
    for (let number = 1; number <= document.numPages; number++) {
      const page = await document.getPage(number);
      const [left = 0, low = 0, right = 0, high = 0] = page.view;
      const { items } = await page.getTextContent();
      pages.push({
        width: (right - left) * mmPerPoint,
        height: (high - low) * mmPerPoint,
        text: items
          .map((item) => ("str" in item ? item.str + (item.hasEOL ? "\n" : "") : ""))
          .join(""),
        ...(withDetails ? await readDetails(page, items) : noDetails),
      });
      page.cleanup();
    }
    return {
      title: known.Title ?? null,
      author: known.Author ?? null,
      language: known.Language ?? null,
      isTagged: marks?.["Marked"] === true,
      outline: flatten(outline as readonly OutlineNode[]),
      pages,
    };
  } finally {
    await task.destroy();
  }
}

type Details = Pick<PdfPage, "paths" | "pictures" | "figures" | "type">;
const noDetails: Details = { paths: [], pictures: 0, figures: [], type: [] };

async function readDetails(page: PDFPageProxy, items: readonly object[]): Promise<Details> {
  const operators = await page.getOperatorList();
  const tree = (await page.getStructTree()) as StructNode | null;
  const fonts = page.commonObjs as { get(name: string): { name?: string } };
  return {
    paths: pathBoxes(operators),
    pictures: operators.fnArray.filter((each) => pictureOperators.has(each)).length,
    figures: tree === null ? [] : figuresIn(tree),
    type: items.flatMap((item): readonly Type[] => {
      const { str, transform, fontName, width } = item as Partial<TextItem>;
      if (str === undefined || transform === undefined || str.trim() === "") return [];
      const [a, b, c, d, e, f] = transform as unknown as Matrix;
      const font = fonts.get(fontName!).name ?? "a font without a name";
      const long = Math.hypot(a, b);
      const along: Matrix = [a / long, b / long, c, d, e, f];
      const box = boxOf([0, 0, width!, capitalHeight], along);
      return [{ font, text: str, points: Math.hypot(c, d), ...box }];
    }),
  };
}

/** Height of a capital, in ems. @source Source Sans 3, its OS/2 table: 660 of 1000 units */
const capitalHeight = 0.66;

const pictureOperators: ReadonlySet<number> = new Set([
  OPS.paintImageXObject,
  OPS.paintInlineImageXObject,
  OPS.paintImageMaskXObject,
  OPS.paintImageXObjectRepeat,
]);

interface StructNode {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly StructNode[];
}

const figuresIn = ({ role, alt, children = [] }: StructNode): readonly string[] => [
  ...(role === "Figure" ? [alt ?? ""] : []),
  ...children.flatMap(figuresIn),
];

interface OutlineNode {
  readonly title: string;
  readonly items: readonly OutlineNode[];
}

const flatten = (nodes: readonly OutlineNode[]): readonly string[] =>
  nodes.flatMap(({ title, items }) => [title, ...flatten(items)]);
