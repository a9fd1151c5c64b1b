import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findNoFit } from "../../lib/packing/no-fit.ts";
import { noFitDepth } from "../../lib/packing/no-fit-depth.ts";
import { makeForm } from "../../lib/packing/place-forms.ts";
import { splitConvex } from "../../lib/packing/split-convex.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import type { Point, Polygon } from "../../lib/plane/types.ts";
import { rectangle } from "./lay-cases.ts";
import { sharedArea } from "./overlap-oracle.ts";

const form = (outline: Polygon) => makeForm(outline, 0, false);

/** A star of random arms round the origin: simple, seldom convex. */
const star = fc
  .array(fc.integer({ min: 30, max: 200 }), { minLength: 5, maxLength: 9 })
  .map((arms): Polygon =>
    arms.map((arm, i): Point => {
      const angle = (2 * Math.PI * i) / arms.length;
      return [arm * Math.cos(angle), arm * Math.sin(angle)];
    }),
  );

describe("no-fit regions", () => {
  // By hand: two rectangles overlap while the shift is within the widths and heights of both.
  test("of two rectangles is a rectangle as large as both together", () => {
    const region = findNoFit(form(rectangle(30, 20)), form(rectangle(10, 5)));
    expect([region.minX, region.minY, region.maxX, region.maxY]).toEqual([-10, -5, 30, 20]);
    expect(noFitDepth(region, 28, 10)).toBeCloseTo(2, 9);
    expect(noFitDepth(region, 30, 10)).toBe(0);
    expect(noFitDepth(region, -11, 10)).toBe(0);
  });

  test("leaves the notch of a U open to a piece that fits in it", () => {
    const u: Polygon = [
      [0, 0],
      [60, 0],
      [60, 50],
      [40, 50],
      [40, 20],
      [20, 20],
      [20, 50],
      [0, 50],
    ];
    const region = findNoFit(form(u), form(rectangle(15, 20)));
    expect(noFitDepth(region, 22, 25)).toBe(0);
    expect(noFitDepth(region, 10, 25)).toBeGreaterThan(0);
  });

  test("is deep exactly where outlines overlap, by a library the program does not use", () => {
    const shift = fc.integer({ min: -350, max: 350 });
    fc.assert(
      fc.property(star, star, shift, shift, (one, two, dx, dy) => {
        const [fixed, moving] = [form(one), form(two)];
        const depth = noFitDepth(findNoFit(fixed, moving), dx, dy);
        const moved = moving.polygon.map(([x, y]): Point => [x + dx, y + dy]);
        const shared = sharedArea(fixed.polygon, moved);
        // A depth of a thousandth of a millimetre and a shared area that small count as touching.
        if (depth > 1e-3) expect(shared).toBeGreaterThan(0);
        if (shared > 1e-3) expect(depth).toBeGreaterThan(0);
      }),
      { numRuns: 80, seed: 2 },
    );
  });
});

test("splitting into convex parts keeps the area", () => {
  fc.assert(
    fc.property(star, (outline) => {
      const parts = splitConvex(outline);
      const sum = parts.reduce((area, part) => area + polygonArea(part), 0);
      expect(sum / polygonArea(outline)).toBeCloseTo(1, 9);
      for (const part of parts) expect(splitConvex(part)).toHaveLength(1);
    }),
    { numRuns: 100, seed: 4 },
  );
});
