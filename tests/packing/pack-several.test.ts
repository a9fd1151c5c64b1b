import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lengthShares } from "../../lib/packing/length-shares.ts";
import { nextSum, packSeveral } from "../../lib/packing/pack-several.ts";
import { planBoards } from "../../lib/packing/plan-boards.ts";
import { board, expectSoundPlans, inch, part } from "./cut-cases.ts";

describe("shares of patterns", () => {
  // Source: Fourer, Gay and Kernighan, AMPL, ch. 15, roll trim example (data file cut.dat in the
  // repository ampl/ampl.github.io; the figures 46.25 in shares and 47 whole rolls from memory).
  test("come to 46.25 rolls for the textbook's order, and to 47 whole ones", () => {
    const roll = [{ capacity: 110, cost: 1, most: Infinity }];
    const [sizes, demand] = [
      [75, 55, 50, 45, 20],
      [8, 10, 24, 35, 48],
    ];
    const shares = lengthShares(roll, sizes, demand);
    expect(shares.total).toBeCloseTo(46.25, 9);
    expect(shares.isProven).toBe(true);
    const whole = packSeveral(roll, sizes, demand);
    expect(whole.patterns).toHaveLength(47);
    expect(whole.costBound).toBe(47);
  });

  test("say when the stock on hand cannot hold everything", () => {
    const few = [{ capacity: 10, cost: 0, most: 2 }];
    expect(lengthShares(few, [6], [3]).isEnough).toBe(false);
    expect(packSeveral(few, [6], [3]).patterns).toBeNull();
  });
});

describe("stock of several lengths and prices", () => {
  // Source: "Quick solution to my cutting stock problem", theboohers.org, 2014: wall timbers sold in
  // 8, 10 and 12 ft at 20.57, 29.97 and 37.27; one of 8 and one of 12 ft are the cheapest.
  const timbers = [
    { ...board(96 * inch, 0, 0, "eight"), price: 20.57 },
    { ...board(120 * inch, 0, 0, "ten"), price: 29.97 },
    { ...board(144 * inch, 0, 0, "twelve"), price: 37.27 },
  ];
  const cuts = [
    part("low", [43.125 * inch]),
    part("mid", [48.875 * inch]),
    part("top", [44.5 * inch], 3),
  ];

  test("takes the published cheapest: one of 8 ft and one of 12 ft", () => {
    const plans = planBoards(cuts, timbers);
    expect(plans.map(({ stock, needed }) => [stock, needed])).toEqual([
      ["eight", 1],
      ["ten", 0],
      ["twelve", 1],
    ]);
    expect(plans[0]!.buys!.cost).toBeCloseTo(57.84, 6);
    expect(plans[0]!.buys!.bound).toBeCloseTo(57.84, 6);
  });

  test("uses up an old length first, and never buys more of it", () => {
    const old = { ...board(50 * inch, 0, 1, "old"), isSold: false, isFirst: true };
    const plans = planBoards(cuts, [old, ...timbers]);
    expect(plans[0]!.needed).toBe(1);
    expect(plans[0]!.used[0]!.places).toHaveLength(1);
    const many = planBoards([part("low", [43 * inch], 9)], [old, ...timbers]);
    expect(many[0]!.needed).toBe(1);
  });

  test("names a part that only used-up old pieces would hold", () => {
    const old = { ...board(3000, 0, 1, "old"), isSold: false };
    const plans = planBoards([part("pole", [2800], 2)], [old, board(2400)]);
    expect(plans.flatMap(({ used }) => used)).toHaveLength(1);
    expect(plans[0]!.short.map((each) => each.part)).toEqual(["pole"]);
  });
});

/** The cheapest way by trying every pattern for the longest length left: only for a handful. */
function cheapest(
  kinds: readonly (readonly [number, number])[],
  lengths: readonly number[],
): number {
  const [first, ...rest] = lengths;
  if (first === undefined) return 0;
  let best = Infinity;
  for (let chosen = 0; chosen < 1 << rest.length; chosen++) {
    const own = rest.filter((_, i) => (chosen & (1 << i)) !== 0);
    const left = rest.filter((_, i) => (chosen & (1 << i)) === 0);
    const sum = first + own.reduce((a, b) => a + b, 0);
    const costs = kinds.filter(([capacity]) => capacity >= sum).map(([, cost]) => cost);
    if (costs.length === 0) continue;
    best = Math.min(best, Math.min(...costs) + cheapest(kinds, left));
  }
  return best;
}

const anyLengths = fc.array(fc.integer({ min: 200, max: 1700 }), { minLength: 1, maxLength: 7 });

test("few lengths cost what trying everything finds, and the bound says so", () => {
  fc.assert(
    fc.property(anyLengths, fc.integer({ min: 3, max: 9 }), (lengths, price) => {
      const kinds = [
        { ...board(2400, 0, 0, "long"), price: 7 },
        { ...board(1800, 0, 0, "short"), price },
      ];
      const parts = lengths.map((length, i) => part(`p${i}`, [length]));
      const plans = planBoards(parts, kinds);
      const best = cheapest(
        kinds.map(({ length, price: cost }) => [length, cost] as const),
        lengths,
      );
      expect(plans[0]!.buys!.cost).toBeCloseTo(best, 6);
      expect(plans[0]!.buys!.bound).toBeCloseTo(best, 6);
      expectSoundPlans(plans, parts, 0);
    }),
    { numRuns: 40, seed: 21 },
  );
});

test("many lengths are all cut, and no bound lies above what is bought", () => {
  const list = fc.array(
    fc.tuple(fc.integer({ min: 150, max: 1700 }), fc.integer({ min: 3, max: 9 })),
    { minLength: 3, maxLength: 5 },
  );
  fc.assert(
    fc.property(list, (lengths) => {
      const parts = lengths.map(([length, copies], i) => part(`p${i}`, [length], copies));
      const kinds = [
        { ...board(2400, 3, 1, "long"), price: 7 },
        { ...board(1800, 3, 0, "short"), price: 5 },
        { ...board(700, 3, 2, "old"), isSold: false, isFirst: true },
      ];
      const plans = planBoards(parts, kinds, { tries: 30 });
      expectSoundPlans(plans, parts, 3);
      const { cost, bound } = plans[0]!.buys!;
      expect(bound).toBeLessThanOrEqual(cost + 1e-9);
      // Rounding loses at most some boards: our own measure, not a proof.
      expect(cost).toBeLessThanOrEqual(bound * 1.1 + 7);
    }),
    { numRuns: 12, seed: 4 },
  );
});

test("a bound is raised to the next sum that prices can make", () => {
  const kinds = [
    { capacity: 1, cost: 5, most: Infinity },
    { capacity: 1, cost: 3, most: Infinity },
  ];
  expect(nextSum(6.2, kinds, 20)).toBe(8);
  expect(nextSum(8, kinds, 20)).toBe(8);
  expect(nextSum(0, kinds, 20)).toBe(0);
});
