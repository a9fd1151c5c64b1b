import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BoundedRow, solveBounded } from "../../lib/packing/solve-bounded.ts";

const problem = (cost: number[], rows: readonly BoundedRow[], low: number[], high: number[]) => ({
  cost: Float64Array.from(cost),
  low: Float64Array.from(low),
  high: Float64Array.from(high),
  rows,
});

const row = (factors: number[], least: number): BoundedRow => ({
  columns: factors.map((_, i) => i),
  factors,
  least,
});

const worth = (cost: readonly number[], values: Float64Array): number =>
  cost.reduce((sum, each, i) => sum + each * values[i]!, 0);

describe("the linear solver", () => {
  // Source: Hillier and Lieberman, "Introduction to Operations Research", the Wyndor Glass example and
  // its dual: worth 36 at shadow prices 0, 3/2 and 1.
  test("finds the published shadow prices of the Wyndor Glass example", () => {
    const rows = [row([1, 0, 3], 3), row([0, 2, 2], 5)];
    const none = [Infinity, Infinity, Infinity];
    const { values } = solveBounded(problem([4, 12, 18], rows, [0, 0, 0], none), 100);
    expect([...values!]).toEqual([0, 1.5, 1].map((each) => expect.closeTo(each, 9) as number));
  });

  test("says so when no values hold every row", () => {
    const rows = [row([1, 1], 5)];
    expect(solveBounded(problem([1, 1], rows, [0, 0], [2, 2]), 100).values).toBeNull();
  });

  test("keeps variables between their bounds", () => {
    const rows = [row([1, 1], 3)];
    const { values } = solveBounded(problem([1, 2], rows, [0, 0], [2, 9]), 100);
    expect([...values!]).toEqual([2, 1]);
  });

  // Brute force: the optimum of two variables lies where two of the lines, bounds included, cross.
  test("finds the best crossing of two lines whenever there is one", () => {
    const whole = fc.integer({ min: -9, max: 9 });
    const anyRow = fc.tuple(whole, whole, whole);
    const positive = fc.integer({ min: 1, max: 9 });
    fc.assert(
      fc.property(
        fc.array(anyRow, { minLength: 1, maxLength: 6 }),
        positive,
        positive,
        (list, p, q) => {
          const rows = list.map(([a, b, least]) => row([a, b], least));
          const { values } = solveBounded(problem([p, q], rows, [0, 0], [7, 8]), 1000);
          const best = bestCrossing(list, p, q);
          if (best === null) expect(values).toBeNull();
          else expect(worth([p, q], values!)).toBeCloseTo(best, 6);
        },
      ),
      { numRuns: 300, seed: 3 },
    );
  });
});

function bestCrossing(
  list: readonly (readonly [number, number, number])[],
  p: number,
  q: number,
): number | null {
  const bounds = [
    [1, 0, 0],
    [0, 1, 0],
    [-1, 0, -7],
    [0, -1, -8],
  ] as const;
  const lines = [...list, ...bounds];
  const found = lines.flatMap(([a, b, c], i) =>
    lines.slice(i + 1).flatMap(([d, e, f]) => {
      const across = a * e - b * d;
      if (across === 0) return [];
      const [x, y] = [(c * e - b * f) / across, (a * f - c * d) / across];
      return lines.every(([u, v, w]) => u * x + v * y >= w - 1e-7) ? [p * x + q * y] : [];
    }),
  );
  return found.length === 0 ? null : Math.min(...found);
}
