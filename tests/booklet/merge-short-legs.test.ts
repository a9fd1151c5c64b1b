import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { describeWalk } from "../../lib/booklet/describe-walk.ts";
import { makeFormat } from "../../lib/units/make-format.ts";
import { mergeShortLegs } from "../../lib/plane/merge-short-legs.ts";
import { line, segmentLength } from "../../lib/plane/segments.ts";
import type { Loop, Point } from "../../lib/plane/types.ts";

const closed = (corners: readonly Point[]): Loop =>
  corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]!));

/** A square of 100 whose upper right corner is cut off by a hair. */
const hairCut = closed([
  [0, 0],
  [100, 0],
  [100, 99.8],
  [99.8, 100],
  [0, 100],
]);

describe("legs too short to lay off", () => {
  // What broke: a mitred corner printed as "Go 0.008 in".
  test("are taken into the leg after them", () => {
    const { legs } = describeWalk(hairCut, "p", makeFormat({ units: "mm", round: 1 }));
    expect(legs).toHaveLength(4);
    expect(legs.map(({ words }) => words).join()).not.toMatch(/Go 0/);
  });

  test("leave an outline closed, with no leg moved by more than they are long", () => {
    const size = fc.double({ min: 20, max: 500, noNaN: true });
    const hair = fc.double({ min: 0.01, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(size, size, hair, (w, h, cut) => {
        const corners: Point[] = [
          [0, 0],
          [w, 0],
          [w, h - cut / 2],
          [w - cut / 2, h],
          [0, h],
        ];
        const merged = mergeShortLegs(closed(corners), 1);
        expect(merged.every((segment) => segmentLength(segment) >= 1)).toBe(true);
        merged.forEach(({ to }, i) => expect(merged[(i + 1) % merged.length]!.from).toEqual(to));
      }),
      { numRuns: 50 },
    );
  });

  test("stay where nothing is short", () => {
    const square = closed([
      [0, 0],
      [9, 0],
      [9, 9],
      [0, 9],
    ]);
    expect(mergeShortLegs(square, 1)).toBe(square);
  });
});
