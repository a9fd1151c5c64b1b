import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { convexHull, perimeter } from "../../lib/plane/convex-hull.ts";
import { loopArea } from "../../lib/plane/loop-area.ts";
import { mitreLimit, offsetLoop } from "../../lib/plane/offset-loop.ts";
import { cross, distance, dot, subtract } from "../../lib/plane/points.ts";
import { arcRadius, reverseSegment } from "../../lib/plane/segments.ts";
import type { Loop, Polygon } from "../../lib/plane/types.ts";
import { arcsOf } from "../fixtures/make-cover.ts";
import { circle, closed, roundedSquare } from "../fixtures/loops.ts";

const all = (loop: Loop, by: number) =>
  offsetLoop(
    loop,
    loop.map(() => by),
  );

const coordinate = fc.integer({ min: 0, max: 400 });
const convex = fc
  .array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 10 })
  .map((points): Polygon => convexHull(points))
  .filter((hull) => hull.length > 2 && loopArea(closed(hull)) > 500);

/** Turn at each corner of a counter-clockwise convex polygon. */
const turnsOf = (corners: Polygon) =>
  corners.map((corner, i) => {
    const into = subtract(corner, corners.at(i - 1)!);
    const out = subtract(corners[(i + 1) % corners.length]!, corner);
    return Math.atan2(cross(into, out), dot(into, out));
  });

describe("a loop moved outward", () => {
  // Steiner's formula with mitred corners: A + P a + a² Σ tan(turn / 2).
  test("by one distance grows by its rim and its mitred corners", () => {
    fc.assert(
      fc.property(convex, fc.integer({ min: 1, max: 30 }), (corners, by) => {
        const turns = turnsOf(corners);
        // Corners sharper than the mitre limit are cut blunt: tested below.
        fc.pre(turns.every((turn) => 1 / Math.cos(turn / 2) < mitreLimit));
        const mitres = turns.reduce((sum, turn) => sum + Math.tan(turn / 2), 0);
        const wanted = loopArea(closed(corners)) + perimeter(corners) * by + by ** 2 * mitres;
        expect(Math.abs(loopArea(all(closed(corners), by)) / wanted - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  test("keeps circles circles of the same centre", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 1, max: 50 }),
        (radius, by) => {
          const grown = all(circle([40, -30], radius), by);
          const radii = arcsOf(grown).map(arcRadius);
          expect(radii.length).toBe(2);
          radii.forEach((one) => expect(one).toBeCloseTo(radius + by, 9));
          expect(loopArea(grown)).toBeCloseTo(Math.PI * (radius + by) ** 2, 6);
        },
      ),
    );
  });

  test("shrinks a hole", () => {
    const hole = circle([0, 0], 50).toReversed().map(reverseSegment);
    expect(loopArea(all(hole, 10))).toBeCloseTo(-Math.PI * 40 ** 2, 9);
  });

  test("keeps rounded corners round: A + P a + π a²", () => {
    const loop = roundedSquare(200, 30);
    const rim = 4 * 140 + 2 * Math.PI * 30;
    const wanted = loopArea(loop) + rim * 12 + Math.PI * 12 ** 2;
    expect(loopArea(all(loop, 12))).toBeCloseTo(wanted, 6);
  });

  test("and back again is where it was", () => {
    fc.assert(
      fc.property(convex, fc.integer({ min: 1, max: 30 }), (corners, by) => {
        fc.pre(turnsOf(corners).every((turn) => 1 / Math.cos(turn / 2) < mitreLimit));
        const back = all(all(closed(corners), by), -by);
        back.forEach(({ from }, i) => expect(distance(from, corners[i]!)).toBeLessThan(1e-6));
      }),
    );
  });

  test("by a distance of its own on each side moves each side by that", () => {
    const moved = offsetLoop(
      closed([
        [0, 0],
        [100, 0],
        [100, 60],
        [0, 60],
      ]),
      [5, 10, 15, 20],
    );
    const wanted = [
      [-20, -5],
      [110, -5],
      [110, 75],
      [-20, 75],
    ] as const;
    moved.forEach(({ from }, i) => expect(distance(from, wanted[i]!)).toBeLessThan(1e-9));
  });

  test("cuts a sharp corner blunt at the mitre limit", () => {
    const sharp = closed(
      [
        [0, 0],
        [400, 20],
        [400, -20],
      ].toReversed() as unknown as Polygon,
    );
    const grown = all(sharp, 10);
    expect(grown.length).toBe(4);
    const reach = Math.max(...grown.map(({ from }) => -from[0]));
    expect(reach).toBeCloseTo(mitreLimit * 10, 6);
  });
});
