import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flattenLoop } from "../../lib/plane/flatten-loop.ts";
import { distance } from "../../lib/plane/points.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import { thinCorners } from "../../lib/plane/thin-corners.ts";
import { circle } from "../fixtures/loops.ts";

describe("a polygon with fewer corners", () => {
  test("keeps the corners of a square whose sides are cut up", () => {
    const cut = Array.from({ length: 40 }, (_, i): readonly [number, number] => {
      const [side, along] = [Math.floor(i / 10), (i % 10) * 10];
      return (
        [
          [along, 0],
          [100, along],
          [100 - along, 100],
          [0, 100 - along],
        ] as const
      )[side]!;
    });
    expect(thinCorners(cut, 0.01)).toEqual([
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ]);
  });

  test("strays from a circle no further than was asked", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 400 }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (radius, within) => {
          const fine = flattenLoop(circle([0, 0], radius), 0.001);
          const thin = thinCorners(fine, within);
          expect(thin.length).toBeLessThan(fine.length);
          thin.forEach((corner, i) => {
            const [x, y] = thin[(i + 1) % thin.length]!;
            const middle = [(corner[0] + x) / 2, (corner[1] + y) / 2] as const;
            expect(radius - distance(middle, [0, 0])).toBeLessThan(within + 0.002);
          });
          // A chord lies inside: the area lost is less than the rim times the distance.
          expect(Math.PI * radius ** 2 - polygonArea(thin)).toBeLessThan(
            2 * Math.PI * radius * (within + 0.01),
          );
        },
      ),
    );
  });

  test("leaves a triangle alone", () => {
    expect(
      thinCorners(
        [
          [0, 0],
          [1, 0],
          [0, 1],
        ],
        5,
      ),
    ).toEqual([
      [0, 0],
      [1, 0],
      [0, 1],
    ]);
  });
});
