import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { papers } from "../../lib/booklet/paper.ts";
import { needsPattern, patternSheets } from "../../lib/booklet/pattern-sheets.ts";
import {
  doesCross,
  liveArea,
  sheetMargin,
  tileOverlap,
  tilePiece,
} from "../../lib/booklet/tile-piece.ts";
import type { LaidPiece } from "../../lib/booklet/place-pattern.ts";
import { patch } from "../fixtures/small-cover.ts";
import { circle } from "../fixtures/small-cover.ts";
import { plain, rectangle } from "../fixtures/small-solid.ts";
import { smallPlan } from "../fixtures/small-plan.ts";

const round = (radius: number): LaidPiece => ({
  piece: {
    ...patch,
    outline: plain(circle(radius)),
    finished: plain(circle(radius - 10, radius)),
  },
  folds: [],
  up: [0, 1],
});

describe("tiling a full-size piece", () => {
  test.each([papers.a4, papers.letter, papers.a3, papers.tabloid])(
    "keeps the live part of $label clear of every edge",
    (paper) => {
      const { left, top, width, height } = liveArea(paper);
      expect(Math.min(left, top)).toBeGreaterThan(sheetMargin);
      expect(left + width).toBeLessThanOrEqual(paper.width - sheetMargin + 1e-9);
      expect(top + height).toBeLessThan(paper.height - sheetMargin);
    },
  );

  test("puts every point of the outline on some sheet", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        (radius, angle) => {
          const live = liveArea(papers.a4);
          const { tiles } = tilePiece(round(radius), papers.a4);
          const [x, y] = [radius + radius * Math.cos(angle), radius + radius * Math.sin(angle)];
          const holding = tiles.filter(({ corner }) => {
            const [across, down] = [x - corner[0], corner[1] - y];
            return (
              across >= -0.06 &&
              down >= -0.06 &&
              across <= live.width + 0.06 &&
              down <= live.height + 0.06
            );
          });
          expect(holding.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("leaves out sheets that carry no line, such as the middle of a great circle", () => {
    const { rows, columns, tiles } = tilePiece(round(900), papers.a4);
    expect(tiles.length).toBeLessThan(rows * columns);
  });

  test("lets neighbours share a strip of the overlap", () => {
    const live = liveArea(papers.a4);
    const { step } = tilePiece(round(300), papers.a4);
    expect(live.width - step[0]).toBe(tileOverlap);
    expect(live.height - step[1]).toBe(tileOverlap);
  });

  test.each([
    [[-5, 5], [15, 5], true],
    [[-5, 5], [-1, 5], false],
    [[0, 12], [12, 0], true],
    [[9, 12], [12, 9], false],
    [[3, 3], [4, 4], true],
  ] as const)("a stretch from %o to %o meets a window of ten by ten: %s", (from, to, isMet) => {
    expect(doesCross(from, to, { min: [0, 0], max: [10, 10] })).toBe(isMet);
  });
});

describe("pattern sheets", () => {
  test("are made of curved and slanted pieces only; square ones go by the walk", () => {
    expect(needsPattern(patch)).toBe(true);
    expect(needsPattern({ ...patch, outline: plain(rectangle(400, 300)) })).toBe(false);
    const { sheets, notes } = patternSheets(smallPlan, "a4");
    expect(sheets.map(({ id }) => id)).toEqual(["map-1", "tile-cord-patch-1-1"]);
    expect(notes).toHaveLength(1);
    expect(notes[0]!.split("; ")).toHaveLength(4);
  });

  // A mirror image is the same sheet of paper turned over.
  test("a mirror image shares the pattern of its twin", () => {
    const left = { ...patch, id: "left", label: "left patch" };
    const right = { ...patch, id: "right", label: "right patch", mirrorOf: "left" };
    const sheets = patternSheets({ ...smallPlan, covers: [], pieces: [left, right] }, "a4").sheets;
    expect(sheets.map(({ id }) => id)).toEqual([
      "map-1",
      "tile-left-patch-turned-over-for-right-1-1",
    ]);
  });

  test("there is only the map where there is nothing to cut", () => {
    const { sheets } = patternSheets({ ...smallPlan, covers: [], pieces: [] }, "a4");
    expect(sheets.map(({ id }) => id)).toEqual(["map-1"]);
  });

  test("draw an arc as an arc of its own radius", () => {
    expect(patternSheets(smallPlan, "a4").sheets[1]!.svg).toMatch(/A55 55 0 /);
  });
});
