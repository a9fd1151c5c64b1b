import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hatchLines } from "../../lib/drawing/hatch-lines.ts";
import { panelHatch } from "../../lib/drawing/hatch-styles.ts";
import type { Point, Polygon } from "../../lib/plane/types.ts";

const total = (lines: readonly [Point, Point][]) =>
  lines.reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay), 0);

const el: Polygon = [
  [0, 0],
  [60, 0],
  [60, 20],
  [25, 20],
  [25, 70],
  [0, 70],
];
const areaOfEl = 60 * 20 + 25 * 50;

// Source: Cavalieri's principle — chords at an even pitch add up to area ÷ pitch, to within the ends.
describe("hatching", () => {
  test.each([0, 20, 45, 90, 135])("at %d degrees covers the area at its pitch", (angle) => {
    const lines = hatchLines([el], { angles: [angle], pitch: 0.25, dash: "plain" });
    expect(total(lines) * 0.25).toBeGreaterThan(areaOfEl * 0.985);
    expect(total(lines) * 0.25).toBeLessThan(areaOfEl * 1.015);
  });

  test("leaves a hole and a kept-clear box white", () => {
    const hole: Polygon = [
      [5, 5],
      [5, 15],
      [15, 15],
      [15, 5],
    ];
    const box = { left: 30, top: 4, right: 50, bottom: 14 };
    const lines = hatchLines([el, hole], { angles: [45], pitch: 1, dash: "plain" }, [box]);
    for (const [a, b] of lines) {
      const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      expect(x > 5 && x < 15 && y > 5 && y < 15).toBe(false);
      expect(x > 30 && x < 50 && y > 4 && y < 14).toBe(false);
    }
  });

  test("keeps every line inside a convex region, whatever its size and place", () => {
    const region = fc.tuple(
      fc.integer({ min: -50, max: 50 }),
      fc.integer({ min: 5, max: 60 }),
      fc.integer({ min: 5, max: 60 }),
    );
    fc.assert(
      fc.property(region, fc.integer({ min: 0, max: 15 }), ([at, w, h], index) => {
        const lines = hatchLines(
          [
            [
              [at, at],
              [at + w, at],
              [at + w, at + h],
              [at, at + h],
            ],
          ],
          panelHatch(index),
        );
        for (const [x, y] of lines.flat())
          expect(x > at - 0.01 && x < at + w + 0.01 && y > at - 0.01 && y < at + h + 0.01).toBe(
            true,
          );
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  test("has sixteen hatches no two of which are alike, then wider ones", () => {
    const looks = Array.from({ length: 32 }, (_, index) => JSON.stringify(panelHatch(index)));
    expect(new Set(looks).size).toBe(32);
  });

  test("gives nothing for an empty region", () => {
    expect(hatchLines([], { angles: [45], pitch: 2, dash: "plain" })).toEqual([]);
  });
});
