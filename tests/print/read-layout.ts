import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { readPdf } from "../../lib/eleventy/read-pdf.ts";
import type { Mm } from "../../lib/plane/types.ts";

/** A line of type on a page, where it stands and how large it is. */
export interface SetLine {
  readonly text: string;
  readonly low: Mm;
  readonly points: number;
  readonly isBold: boolean;
}

export interface PageLayout {
  /** Lines between the running heads and the foot, from the top down. */
  readonly lines: readonly SetLine[];
  /** Share of the room between the margins that is used, from the top to the lowest ink. */
  readonly fill: number;
  /** A heading with nothing below it, or null. */
  readonly stranded: string | null;
}

export interface Layout {
  readonly pages: readonly PageLayout[];
  /** Page, counted from 1, on which an id of the booklet stands; null for an id that is not there. */
  readonly pageOf: (id: string) => number | null;
}

// As the edition sets them: margins at the head and the foot of the booklet.
const [head, foot]: readonly [Mm, Mm] = [17, 16];
const mmPerPoint = 25.4 / 72;
/** The least type of a heading, in points. */
const headingPoints = 11.5;

/** How the pages of a printed booklet are filled, read back from the PDF. */
export async function readLayout(bytes: Uint8Array): Promise<Layout> {
  const facts = await readPdf(bytes, { withDetails: true });
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  try {
    const pages: PageLayout[] = [];
    for (const [i, { height, paths }] of facts.pages.entries()) {
      const page = await document.getPage(i + 1);
      await page.getOperatorList();
      const { items } = await page.getTextContent();
      const fonts = page.commonObjs as { get(name: string): { name?: string } };
      const lines = items.flatMap((item): readonly SetLine[] => {
        if (!("str" in item) || item.str.trim() === "") return [];
        const low = item.transform[5] * mmPerPoint;
        if (low < foot || low > height - head) return [];
        const isBold = /semibold|bold|600/i.test(fonts.get(item.fontName).name ?? "");
        return [{ text: item.str, low, points: item.transform[3], isBold }];
      });
      const ink = paths
        .filter(({ low, height: high }) => low >= foot - 1 && low + high < height - head + 1)
        .map(({ low }) => low);
      const sorted = lines.toSorted((a, b) => b.low - a.low);
      pages.push({
        lines: sorted,
        fill:
          (height - head - Math.min(height - head, ...ink, ...lines.map(({ low }) => low))) /
          (height - head - foot),
        stranded: strandedHeading(sorted, ink),
      });
      page.cleanup();
    }
    const places = new Map<string, number>();
    for (const [id, dest] of Object.entries(await document.getDestinations())) {
      const target = (dest as readonly unknown[])[0];
      places.set(id, (await document.getPageIndex(target as { num: number; gen: number })) + 1);
    }
    return { pages, pageOf: (id) => places.get(id) ?? null };
  } finally {
    await task.destroy();
  }
}

/** Is the lowest line a heading? Its own rule may stand under it, and nothing else. */
function strandedHeading(lines: readonly SetLine[], ink: readonly Mm[]): string | null {
  const last = lines.at(-1);
  if (last === undefined || !last.isBold || last.points < headingPoints) return null;
  return ink.some((low) => low < last.low - 4) ? null : last.text;
}
