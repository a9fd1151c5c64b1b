import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { outlineFault } from "../../lib/project/outline-fault.ts";
import type { Point } from "../../lib/plane/types.ts";

describe("an outline", () => {
  test.each<readonly [string, readonly Point[]]>([
    [
      "a bow tie",
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
    ],
    [
      "a spike that runs back on itself",
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [10, 4],
        [0, 4],
      ],
    ],
    [
      "a corner that touches a side",
      [
        [0, 0],
        [10, 0],
        [5, 0.0000001],
        [10, 10],
        [0, 10],
      ],
    ],
    [
      "a line there and back",
      [
        [0, 0],
        [10, 0],
        [5, 0],
      ],
    ],
    [
      "two corners",
      [
        [0, 0],
        [10, 0],
      ],
    ],
    ["none", []],
    [
      "the first corner again at the end",
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 0],
      ],
    ],
  ])("%s is refused", (_, corners) => {
    expect(outlineFault(corners)).not.toBeNull();
  });

  test.each<readonly [string, readonly Point[]]>([
    [
      "an L",
      [
        [0, 0],
        [9, 0],
        [9, 3],
        [4, 3],
        [4, 6],
        [0, 6],
      ],
    ],
    [
      "a corner in the middle of a straight side",
      [
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
    ],
    [
      "a triangle",
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ],
    ],
  ])("%s is sound whichever corner comes first and whichever way it runs", (_, corners) => {
    for (const order of [corners, [...corners].reverse()]) {
      for (let first = 0; first < order.length; first += 1) {
        expect(outlineFault([...order.slice(first), ...order.slice(0, first)])).toBeNull();
      }
    }
  });

  test("corners round a circle are sound; swapping two that are apart makes them cross", () => {
    const count = fc.integer({ min: 5, max: 12 });
    fc.assert(
      fc.property(count, fc.double({ min: 0, max: 6, noNaN: true }), (n, start) => {
        const corners = Array.from({ length: n }, (_, i): Point => {
          const angle = start + (i * 2 * Math.PI) / n;
          return [100 * Math.cos(angle), 100 * Math.sin(angle)];
        });
        expect(outlineFault(corners)).toBeNull();
        const [a, b, c, ...rest] = corners;
        if (a === undefined || b === undefined || c === undefined) return;
        expect(outlineFault([a, c, b, ...rest])).not.toBeNull();
      }),
      { numRuns: 60, seed: 6 },
    );
  });
});
