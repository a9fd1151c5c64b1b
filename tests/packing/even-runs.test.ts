import fc from "fast-check";
import { expect, test } from "vitest";
import { evenRuns } from "../../lib/packing/even-runs.ts";
import type { Cut } from "../../lib/packing/types.ts";
import { cutLines } from "../../lib/steps/cut-lines.ts";
import { makeFormat } from "../../lib/units/make-format.ts";

const format = makeFormat({ units: "mm", round: 1 });
const rule = { kind: () => "", at: (at: number) => at, fewest: 3 };

test("steps of one length belong together, from three on", () => {
  expect(evenRuns([10, 20, 30, 45, 60, 61], rule)).toEqual([[10, 20, 30], [45], [60], [61]]);
});

test("another kind begins another run", () => {
  const runs = evenRuns([10, 20, 30, 40, 50, 60], { ...rule, kind: (at) => `${at > 30}` });
  expect(runs).toEqual([
    [10, 20, 30],
    [40, 50, 60],
  ]);
});

test("every item is in one run, in order, and every run is even", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 3 })), (steps) => {
      let at = 0;
      const items = steps.map((step) => (at += step));
      const runs = evenRuns(items, rule);
      expect(runs.flat()).toEqual(items);
      runs.forEach((run) =>
        run.slice(2).forEach((item, i) => {
          expect(item - run[i + 1]!).toBe(run[i + 1]! - run[i]!);
        }),
      );
    }),
  );
});

const crossAt = (at: number, i: number): Cut => ({
  order: i + 1,
  kind: "cross",
  axis: 0,
  at,
  of: { at: [0, 0], size: [2400, 34] },
});

test("five even lines are told by the first and their distance, fewer one by one", () => {
  expect(cutLines([100, 203, 306, 409, 512].map(crossAt), "pencil", format)).toEqual([
    "Draw lines 1 to 5 from the left end: 100 mm, then every 103 mm.",
  ]);
});

test("uneven lines are told four at a time", () => {
  expect(cutLines([100, 203, 306, 409, 500].map(crossAt), "pencil", format)).toEqual([
    "Draw lines 1 to 4 from the left end: 100 mm, 203 mm, 306 mm and 409 mm.",
    "Draw line 5, 500 mm from the left end, with the pencil.",
    "Stop each line where the figure ends it.",
  ]);
});
