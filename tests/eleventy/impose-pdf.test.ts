import { PDFDocument, StandardFonts } from "@cantoo/pdf-lib";
import { beforeAll, describe, expect, test } from "vitest";
import { foldedPaper, papers } from "../../lib/booklet/paper.ts";
import { imposeFaces, imposePdf } from "../../lib/eleventy/impose-pdf.ts";
import { readPdf } from "../../lib/eleventy/read-pdf.ts";

// Common practice, no source: the order of a stapled booklet of eight pages, as any folded newspaper shows it.
test("eight pages go on two sheets as a folded newspaper has them", () => {
  expect(imposeFaces(8)).toEqual([
    [8, 1],
    [2, 7],
    [6, 3],
    [4, 5],
  ]);
});

/** Fold a stack and read it: fronts and backs from the outermost sheet in, then out again. */
function leafThrough(faces: readonly (readonly [number | null, number | null])[]) {
  const sheets = faces.flatMap((front, i) => (i % 2 === 0 ? [{ front, back: faces[i + 1]! }] : []));
  const first = sheets.flatMap(({ front, back }) => [front[1], back[0]]);
  const second = sheets.toReversed().flatMap(({ front, back }) => [back[1], front[0]]);
  return [...first, ...second];
}

describe("a folded stack", () => {
  test.each(Array.from({ length: 41 }, (_, i) => i + 1))(
    "of %i pages is read in order, with the blank pages last",
    (pages) => {
      const read = leafThrough(imposeFaces(pages));
      expect(read.length % 4).toBe(0);
      expect(read.length - pages).toBeLessThan(4);
      expect(read).toEqual(
        Array.from({ length: read.length }, (_, i) => (i < pages ? i + 1 : null)),
      );
    },
  );
});

describe.each([papers.a4, papers.letter])("imposed on $label", (paper) => {
  const half = foldedPaper(paper);
  let sides: Awaited<ReturnType<typeof readPdf>>;

  beforeAll(async () => {
    const pdf = await PDFDocument.create();
    const font = await pdf.embedFont(StandardFonts.Helvetica);
    for (let number = 1; number <= 6; number++) {
      const page = pdf.addPage([(half.width * 72) / 25.4, (half.height * 72) / 25.4]);
      page.drawText(`page-${number}`, { x: 30, y: 30, size: 12, font });
      page.drawRectangle({ x: 72, y: 72, width: 144, height: 72, borderWidth: 0.1 });
    }
    sides = await readPdf(await imposePdf(await pdf.save(), paper), { withDetails: true });
  });

  test("every side is the sheet on its side, and holds its two pages left and right", () => {
    expect(sides.pages.map(({ text }) => text.match(/page-\d/g))).toEqual([
      ["page-1"],
      ["page-2"],
      ["page-6", "page-3"],
      ["page-4", "page-5"],
    ]);
    for (const { width, height } of sides.pages) {
      expect(width).toBeCloseTo(paper.height, 1);
      expect(height).toBeCloseTo(paper.width, 1);
    }
  });

  test("a rectangle of 2 by 1 in keeps its size, the right page right of the fold", () => {
    const boxes = sides.pages[2]!.paths.filter(({ width }) => Math.abs(width - 50.8) < 0.5);
    expect(boxes).toHaveLength(2);
    for (const box of boxes) expect(box.height).toBeCloseTo(25.4, 0);
    expect(boxes[0]!.left).toBeLessThan(paper.height / 2);
    expect(boxes[1]!.left).toBeGreaterThan(paper.height / 2);
  });
});
