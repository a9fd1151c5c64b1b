import { describe, expect, test } from "vitest";
import { drawPatternSheets } from "../../lib/drawing/index.ts";
import { outlinePoints } from "../../lib/drawing/arrange-patterns.ts";
import { OVERLAP, tileGrid } from "../../lib/drawing/tile-grid.ts";
import { samples } from "../fixtures/drawing/samples.ts";

// Source of the sizes: ISO 216 (A4, A3); ANSI/ASME Y14.1 (Letter 8.5 × 11 in, Tabloid 11 × 17 in).
const papers = [
  { name: "A4", width: 210, height: 297 },
  { name: "A3", width: 297, height: 420 },
  { name: "Letter", width: 215.9, height: 279.4 },
  { name: "Tabloid", width: 279.4, height: 431.8 },
];
const input = samples["pieces"]!;

/** Ends of the straight stretches and arcs of path data, without those inside the clipped group. */
const cornersOf = (data: string) =>
  [...data.matchAll(/(?:[ML]|A[\d.]+ [\d.]+ 0 [01] [01] )(-?[\d.]+) (-?[\d.]+)/g)].map(
    (match) => [Number(match[1]), Number(match[2])] as const,
  );
const unclipped = (sheet: string) => sheet.replace(/<g clip-path.*?<\/g>/s, "");

describe.each(papers)("full-size patterns on $name", (paper) => {
  const sheets = drawPatternSheets(input, paper);
  const grid = tileGrid(input, paper);

  test("are as large as the paper, one unit a millimetre", () => {
    expect(sheets.length).toBe(grid.tiles.length + 1);
    for (const sheet of sheets) {
      expect(sheet).toContain(
        `width="${paper.width}mm" height="${paper.height}mm" viewBox="0 0 ${paper.width} ${paper.height}"`,
      );
      expect(sheet).not.toMatch(/<(pattern|mask|filter)|NaN|undefined/);
    }
  });

  // Source: International yard and pound agreement, 1959: 4 in are 101.6 mm exactly.
  test("carry a check line of 100 mm and one of 4 in, both ways, on every sheet", () => {
    for (const sheet of sheets) {
      const lengths = [
        ...sheet.matchAll(
          /class="line check check-(mm|in)" d="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/g,
        ),
      ].map(([, unit, ...ends]) => {
        const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = ends.map(Number);
        return `${unit} ${x1 === x2 ? "up" : "along"} ${Math.hypot(x2 - x1, y2 - y1).toFixed(2)}`;
      });
      expect(lengths.sort()).toEqual([
        "in along 101.60",
        "in up 101.60",
        "mm along 100.00",
        "mm up 100.00",
      ]);
    }
  });

  test("keep 10 mm of white at every edge", () => {
    for (const sheet of sheets) {
      const points = [...unclipped(sheet).matchAll(/ d="([^"]+)"/g)].flatMap((match) =>
        cornersOf(match[1] ?? ""),
      );
      expect(points.length).toBeGreaterThan(8);
      for (const [x, y] of points) {
        expect(Math.min(x, y, paper.width - x, paper.height - y)).toBeGreaterThanOrEqual(10);
      }
      const window = /<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)"/.exec(
        sheet,
      );
      const [x = 0, y = 0, w = 0, h = 0] = (window ?? []).slice(1).map(Number);
      expect(Math.min(x, y, paper.width - x - w, paper.height - y - h)).toBeGreaterThanOrEqual(10);
    }
  });

  test("show every part of every cut line on some sheet", () => {
    for (const { piece, toField } of grid.patterns)
      for (const [x, y] of outlinePoints(piece, toField))
        expect(
          grid.tiles.some(
            ({ field }) =>
              x >= field.left - 0.01 &&
              x <= field.right + 0.01 &&
              y >= field.top - 0.01 &&
              y <= field.bottom + 0.01,
          ),
        ).toBe(true);
  });

  test("overlap their neighbours by 12 mm and are called by row and column", () => {
    expect(OVERLAP).toBe(12);
    for (const tile of grid.tiles) {
      expect(tile.reference).toBe(`${String.fromCharCode(65 + tile.row)}${tile.column + 1}`);
      const right = grid.tiles.find(
        ({ row, column }) => row === tile.row && column === tile.column + 1,
      );
      if (right) expect(tile.field.right - right.field.left).toBeCloseTo(12, 9);
    }
    const named = sheets.slice(1).map((sheet) => /pattern sheet ([A-Z]+\d+)/.exec(sheet)?.[1]);
    expect(named).toEqual(grid.tiles.map(({ reference }) => reference));
  });

  test("draw a circle as arcs of its exact radius, seam line and cut line", () => {
    // The round of the fixture: finished radius 225 mm, allowance 15 mm.
    expect(sheets.some((sheet) => sheet.includes("A240 240 "))).toBe(true);
    expect(sheets.some((sheet) => sheet.includes("A225 225 "))).toBe(true);
  });
});

test("a mirror image shares the pattern of its twin", () => {
  const { patterns } = tileGrid(input, papers[0]!);
  expect(patterns.find(({ piece }) => piece.id === "P1")?.turnedOver).toEqual(["P2"]);
  expect(patterns.some(({ piece }) => piece.id === "P2")).toBe(false);
});

test("there are no sheets where there is nothing to cut", () => {
  expect(drawPatternSheets(samples["solids"]!, papers[0]!)).toEqual([]);
});
