import { describe, expect, test } from "vitest";
import { checkDiagonals } from "../../lib/plane/check-diagonals.ts";
import { line } from "../../lib/plane/segments.ts";
import type { Loop, Point } from "../../lib/plane/types.ts";
import { circle } from "../fixtures/small-cover.ts";
import { rectangle } from "../fixtures/small-solid.ts";

const closed = (corners: readonly Point[]): Loop =>
  corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]!));

const lengths = (loop: Loop) => checkDiagonals(loop).map(({ length }) => length);

describe("check diagonals", () => {
  // 3-4-5 triangle, Euclid I.47: a rectangle of 300 by 400 has diagonals of 500.
  test("of a 300 by 400 rectangle are both 500", () => {
    expect(lengths(rectangle(300, 400))).toEqual([500, 500]);
  });

  test("are not asked of a triangle or a circle", () => {
    expect(lengths(closed([[0, 0], [4, 0], [0, 3]]))).toEqual([]); // prettier-ignore
    expect(lengths(circle(100))).toEqual([]);
  });

  // The base of a long trapezoid is longer than its diagonals, but says nothing that the walk does not.
  test("are never a side", () => {
    const trapezoid = closed([[0, 0], [100, 0], [90, 30], [10, 30]]); // prettier-ignore
    const both = Math.hypot(90, 30);
    expect(lengths(trapezoid)).toEqual([both, both]);
  });

  // In an L the two far ends see each other only across the cloth that is not there.
  test("run inside the outline", () => {
    const ell = closed([[0, 0], [60, 0], [60, 20], [20, 20], [20, 60], [0, 60]]); // prettier-ignore
    for (const { from, to } of checkDiagonals(ell)) {
      const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
      expect(middle[0] < 20 || middle[1] < 20).toBe(true);
    }
    expect(lengths(ell)[0]).toBeCloseTo(Math.hypot(60, 20), 9);
  });
});
