import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { TextItem } from "pdfjs-dist/types/src/display/api.js";
import type { Count, Mm } from "../plane/types.ts";

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

export interface Type {
  readonly font: string;
  readonly text: string;
  readonly points: number;
}

export interface PathBox {
  readonly left: Mm;
  readonly low: Mm;
  readonly width: Mm;
  readonly height: Mm;
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
      const { str, transform, fontName } = item as Partial<TextItem>;
      if (str === undefined || transform === undefined || str.trim() === "") return [];
      const [, , c, d] = transform as readonly number[];
      const font = fonts.get(fontName!).name ?? "a font without a name";
      return [{ font, text: str, points: Math.hypot(c!, d!) }];
    }),
  };
}

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

type Matrix = readonly [number, number, number, number, number, number];

/** Follow the drawing operators, keeping matrix and clip, and box every path that is painted. */
function pathBoxes({
  fnArray,
  argsArray,
}: {
  fnArray: number[];
  argsArray: unknown[];
}): readonly PathBox[] {
  const boxes: PathBox[] = [];
  const saved: State[] = [];
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], clip: null };
  let isClip = false;
  fnArray.forEach((operator, i) => {
    const values = argsArray[i] as readonly unknown[];
    if (operator === OPS.save) saved.push(state);
    if (operator === OPS.restore) state = saved.pop() ?? state;
    if (operator === OPS.transform) {
      state = { ...state, matrix: multiply(state.matrix, values as unknown as Matrix) };
    }
    if (operator === OPS.clip || operator === OPS.eoClip) isClip = true;
    if (operator !== OPS.constructPath) return;
    // [paint operator, path data, box of the path as left, low, right, high]
    const bounds = values[2] as ArrayLike<number> | null | undefined;
    if (bounds?.length !== 4) return;
    const box = within(boxOf(bounds, state.matrix), state.clip);
    if (isClip) state = { ...state, clip: box };
    else if (box.width >= 0 && box.height >= 0) boxes.push(box);
    isClip = false;
  });
  return boxes;
}

interface State {
  readonly matrix: Matrix;
  /** What of the page is open to paint, as a box; null for all of it. */
  readonly clip: PathBox | null;
}

/** The part of a box that lies in another; of negative size where none does. */
function within(box: PathBox, clip: PathBox | null): PathBox {
  if (clip === null) return box;
  const left = Math.max(box.left, clip.left);
  const low = Math.max(box.low, clip.low);
  const right = Math.min(box.left + box.width, clip.left + clip.width);
  const high = Math.min(box.low + box.height, clip.low + clip.height);
  return { left, low, width: right - left, height: high - low };
}

function boxOf(bounds: ArrayLike<number>, [a, b, c, d, e, f]: Matrix): PathBox {
  const corners = [0, 2].flatMap((x) =>
    [1, 3].map(
      (y) => [a * bounds[x]! + c * bounds[y]! + e, b * bounds[x]! + d * bounds[y]! + f] as const,
    ),
  );
  const xs = corners.map(([x]) => x * mmPerPoint);
  const ys = corners.map(([, y]) => y * mmPerPoint);
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  return { left, low, width: Math.max(...xs) - left, height: Math.max(...ys) - low };
}

const multiply = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];
