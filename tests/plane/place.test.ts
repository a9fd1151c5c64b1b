import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loopArea } from "../../lib/plane/loop-area.ts";
import { composePlacements, placeLoop, placePoint } from "../../lib/plane/place.ts";
import { cosSin, distance, rotate, wholeTurn } from "../../lib/plane/points.ts";
import type { Placement, Point } from "../../lib/plane/types.ts";
import { circle, roundedSquare } from "../fixtures/loops.ts";

const coordinate = fc.integer({ min: -500, max: 500 });
const point = fc.tuple(coordinate, coordinate) as fc.Arbitrary<Point>;
const placement: fc.Arbitrary<Placement> = fc.record({
  turn: fc.oneof(
    fc.constantFrom(0, Math.PI / 2, Math.PI, -Math.PI / 2),
    fc.double({ min: -7, max: 7, noNaN: true }),
  ),
  isFlipped: fc.boolean(),
  shift: point,
});

describe("moving things in the plane", () => {
  test("by two moves made into one is moving them twice", () => {
    fc.assert(
      fc.property(point, placement, placement, (at, first, second) => {
        const twice = placePoint(placePoint(at, first), second);
        const once = placePoint(at, composePlacements(first, second));
        expect(distance(twice, once)).toBeLessThan(1e-9);
      }),
    );
  });

  test("keeps distances", () => {
    fc.assert(
      fc.property(point, point, placement, (a, b, move) => {
        expect(distance(placePoint(a, move), placePoint(b, move))).toBeCloseTo(distance(a, b), 9);
      }),
    );
  });

  test("keeps the area of a loop and its sense of turning, flipped or not", () => {
    fc.assert(
      fc.property(placement, (move) => {
        const loop = roundedSquare(90, 20);
        expect(loopArea(placeLoop(loop, move))).toBeCloseTo(loopArea(loop), 6);
        expect(loopArea(placeLoop(circle([10, 20], 30), move))).toBeCloseTo(Math.PI * 900, 6);
      }),
    );
  });
});

describe("turning", () => {
  test("by quarter turns is exact", () => {
    expect(rotate([3, 4], Math.PI / 2)).toEqual([-4, 3]);
    expect(rotate([3, 4], Math.PI)).toEqual([-3, -4]);
    expect(rotate([3, 4], -Math.PI / 2)).toEqual([4, -3]);
    expect(cosSin(6 * Math.PI)).toEqual([1, 0]);
  });

  test("is told within one whole turn, a hair below one as none", () => {
    expect(wholeTurn(-Math.PI / 2)).toBeCloseTo((3 * Math.PI) / 2, 12);
    expect(wholeTurn(2 * Math.PI - 1e-12)).toBe(0);
  });
});
