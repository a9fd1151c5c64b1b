import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Mm } from "../plane/types.ts";

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
}

export interface PathBox {
  readonly left: Mm;
  readonly low: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

/** What stands in a PDF, read back from its bytes. Paths are left out unless asked for. */
export async function readPdf(
  bytes: Uint8Array,
  { withPaths = false }: { readonly withPaths?: boolean } = {},
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
        paths: withPaths ? pathBoxes(await page.getOperatorList()) : [],
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

interface OutlineNode {
  readonly title: string;
  readonly items: readonly OutlineNode[];
}

const flatten = (nodes: readonly OutlineNode[]): readonly string[] =>
  nodes.flatMap(({ title, items }) => [title, ...flatten(items)]);

type Matrix = readonly [number, number, number, number, number, number];

/** Follow the drawing operators, keeping the matrix, and box every path. */
function pathBoxes({
  fnArray,
  argsArray,
}: {
  fnArray: number[];
  argsArray: unknown[];
}): readonly PathBox[] {
  const boxes: PathBox[] = [];
  const saved: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  fnArray.forEach((operator, i) => {
    const values = argsArray[i] as readonly unknown[];
    if (operator === OPS.save) saved.push(matrix);
    if (operator === OPS.restore) matrix = saved.pop() ?? matrix;
    if (operator === OPS.transform) matrix = multiply(matrix, values as unknown as Matrix);
    if (operator !== OPS.constructPath) return;
    // [paint operator, path data, box of the path as left, low, right, high]
    const bounds = values[2] as ArrayLike<number> | null | undefined;
    if (bounds?.length === 4) boxes.push(boxOf(bounds, matrix));
  });
  return boxes;
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
