import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nestGap, nestOnSheets } from "../../lib/booklet/nest-on-sheets.ts";
import type { Nested, Nestling } from "../../lib/booklet/nest-on-sheets.ts";

const sheet = [170, 240] as const;
const side = fc.double({ min: 5, max: 165, noNaN: true });
const some = fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 14 });

const named = (sizes: readonly (readonly [number, number])[]): readonly Nestling[] =>
  sizes.map((size, i) => ({ id: String(i), size }));

const boxOf = ({ id, at, isTurned }: Nested, nestlings: readonly Nestling[]) => {
  const [w, h] = nestlings.find((each) => each.id === id)!.size;
  const [width, height] = isTurned ? [h, w] : [w, h];
  return { left: at[0], low: at[1], right: at[0] + width, high: at[1] + height };
};

describe("nesting on sheets", () => {
  test("places every piece once, on its sheet, clear of all others", () => {
    fc.assert(
      fc.property(some, (sizes) => {
        const nestlings = named(sizes);
        const sheets = nestOnSheets(nestlings, sheet);
        const ids = sheets.flat().map(({ id }) => id);
        expect([...ids].sort()).toEqual(nestlings.map(({ id }) => id).sort());
        for (const nested of sheets) {
          const boxes = nested.map((each) => boxOf(each, nestlings));
          boxes.forEach((a, i) => {
            expect(Math.min(a.left, a.low)).toBeGreaterThanOrEqual(-1e-6);
            expect(a.right).toBeLessThanOrEqual(sheet[0] + 1e-6);
            expect(a.high).toBeLessThanOrEqual(sheet[1] + 1e-6);
            for (const b of boxes.slice(i + 1)) {
              const gaps = [a.left - b.right, b.left - a.right, a.low - b.high, b.low - a.high];
              expect(Math.max(...gaps)).toBeGreaterThanOrEqual(nestGap - 1e-6);
            }
          });
        }
      }),
      { numRuns: 120, seed: 5 },
    );
  });

  test("never takes more sheets than pieces, nor fewer than their area needs", () => {
    fc.assert(
      fc.property(some, (sizes) => {
        const count = nestOnSheets(named(sizes), sheet).length;
        const area = sizes.reduce((sum, [w, h]) => sum + w * h, 0);
        expect(count).toBeLessThanOrEqual(sizes.length);
        expect(count).toBeGreaterThanOrEqual(area / (sheet[0] * sheet[1]) - 1e-9);
      }),
      { numRuns: 120, seed: 6 },
    );
  });

  // Worked by hand: 82 + 6 + 82 = 170 across and 117 + 6 + 117 = 240 up.
  test("four quarters of a sheet share it", () => {
    const quarter = [82, 117] as const;
    expect(nestOnSheets(named([quarter, quarter, quarter, quarter]), sheet)).toHaveLength(1);
  });

  test("a long piece is turned where only that fits", () => {
    expect(nestOnSheets(named([[230, 100]]), sheet)).toEqual([
      [{ id: "0", at: [0, 0], isTurned: true }],
    ]);
  });
});
