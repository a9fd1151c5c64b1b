import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planSlabs } from "../../lib/packing/plan-slabs.ts";
import type { Part } from "../../lib/packing/types.ts";
import { randomBelow, seededRandom, shuffle } from "../../lib/plane/random.ts";
import { expectSoundPlans, part, slab } from "./cut-cases.ts";

/**
 * Cut a slab right across at random, again and again: the pieces fill it exactly, so that one slab is
 * the known optimum.
 */
function cutAtRandom(size: readonly number[], count: number, seed: number): Part[] {
  const random = seededRandom(seed);
  let pieces: (readonly number[])[] = [size];
  while (pieces.length < count) {
    const volume = (each: readonly number[]) => each.reduce((a, b) => a * b, 1);
    const [largest, ...rest] = [...pieces].sort((a, b) => volume(b) - volume(a));
    const axis = largest!.indexOf(Math.max(...largest!));
    const near = Math.round(largest![axis]! * (0.3 + 0.4 * random()));
    const withSide = (side: number) => largest!.map((each, i) => (i === axis ? side : each));
    pieces = [...rest, withSide(near), withSide(largest![axis]! - near)];
  }
  return shuffle(pieces, random).map((each, i) => part(`p${i}`, each));
}

describe("solver and bound on small jobs", () => {
  test.each([1, 2, 3])(
    "put a slab cut at random into twelve (%i) together again, and prove it",
    (seed) => {
      const parts = cutAtRandom([900, 600, 120], 12, seed);
      const plans = planSlabs(parts, [slab([900, 600, 120])]);
      expect(plans[0]).toMatchObject({ needed: 1, lowerBound: 1 });
      expectSoundPlans(plans, parts, 0);
    },
  );

  test("agree for up to ten blocks of any sizes", () => {
    for (let seed = 1; seed <= 24; seed++) {
      const random = seededRandom(seed);
      const between = (low: number, high: number) => low + randomBelow(random, high - low);
      const parts = Array.from({ length: 2 + (seed % 9) }, (_, i) =>
        part(`b${i}`, [between(150, 600), between(100, 450), between(30, 100)]),
      );
      const [plan] = planSlabs(parts, [slab([700, 500, 100])]);
      expect(plan!.lowerBound, `seed ${seed}`).toBe(plan!.needed);
    }
  });

  test("agree for a class set of few kinds of block", () => {
    const parts = [part("side", [300, 200, 50], 10), part("seat", [400, 300, 50], 5)];
    const [plan] = planSlabs(parts, [slab([1000, 600, 100])]);
    // By hand: 10 × 3 dm³ and 5 × 6 dm³ are 60 dm³, just one slab; two deep, the sizes tile it.
    expect(plan).toMatchObject({ needed: 1, lowerBound: 1 });
  });
});

describe("stock of several sizes", () => {
  const old = { ...slab([460, 420, 100], 1, 0, "old"), isSold: false, isFirst: true };

  test("uses an old slab up before a newer one on hand", () => {
    const plans = planSlabs(
      [part("pad", [400, 400, 100])],
      [{ ...slab([1000, 500, 100], 1, 0, "new"), price: 20 }, old],
    );
    expect(plans.map(({ needed }) => needed)).toEqual([0, 1]);
  });

  test("glues up what only a used-up old slab would hold whole", () => {
    const large = { ...slab([1500, 500, 100], 1, 0, "large"), isSold: false };
    const parts = [part("bench", [1400, 450, 100], 2)];
    const plans = planSlabs(parts, [slab([1000, 500, 100]), large]);
    const layers = plans.flatMap(({ used }) => used.flatMap(({ places }) => places));
    expect(layers.map(({ layer }) => layer[1]).sort()).toEqual([1, 2, 2]);
    expectSoundPlans(plans, parts, 0);
  });

  test("takes the cheaper of two sizes sold, and the bound agrees", () => {
    const plans = planSlabs(
      [part("pad", [900, 400, 80], 2)],
      [
        { ...slab([1000, 500, 80], 0, 0, "small"), price: 12 },
        { ...slab([2000, 1000, 80], 0, 0, "large"), price: 30 },
      ],
    );
    expect(plans.map(({ needed }) => needed)).toEqual([2, 0]);
    expect(plans[0]!.buys).toMatchObject({ unit: "price", cost: 24, bound: 24 });
  });
});

describe("what would make it fit", () => {
  test("names the trim, and with it nothing has to be bought", () => {
    const parts = [part("seat", [600, 420, 80]), part("back", [600, 200, 80])];
    const [plan] = planSlabs(parts, [slab([612, 610, 80], 1)]);
    expect(plan!.needed).toBe(2);
    const remedy = plan!.short[0]!.remedy;
    const [, side, name, by] = /the (\d+) mm side of (\w+) shorter by ([\d.]+) mm/.exec(remedy)!;
    const trimmed = parts.map((each) =>
      each.id === name
        ? { ...each, size: each.size.map((s) => (s === Number(side) ? s - Number(by) : s)) }
        : each,
    );
    expect(planSlabs(trimmed, [slab([612, 610, 80], 1)])[0]).toMatchObject({
      needed: 1,
      short: [],
    });
    // By hand: 420 + 200 is 8 more than 612.
    expect(Number(by)).toBeGreaterThanOrEqual(8);
    expect(Number(by)).toBeLessThanOrEqual(10);
  });

  test("names the odd piece that would do", () => {
    const parts = [part("seat", [600, 600, 80]), part("arm", [300, 120, 80])];
    const [plan] = planSlabs(parts, [slab([620, 610, 80], 1)]);
    expect(plan!.short[0]!.remedy).toContain("a piece of 300 mm × 120 mm × 80 mm or larger");
  });

  test("trims a size that several parts share on all of them", () => {
    const parts = [part("a", [310, 200, 80]), part("b", [310, 190, 80])];
    const [plan] = planSlabs(parts, [slab([600, 205, 80], 1)]);
    expect(plan!.short[0]!.remedy).toMatch(/every 310 mm side shorter|310 mm side of/);
  });
});

test("every plan from several sizes is sound", () => {
  const side = fc.integer({ min: 60, max: 700 });
  const blocks = fc.array(fc.tuple(side, side, fc.integer({ min: 20, max: 200 })), {
    minLength: 1,
    maxLength: 5,
  });
  fc.assert(
    fc.property(blocks, fc.constantFrom(0, 3), (sizes, kerf) => {
      const parts = sizes.map((size, i) => part(`b${i}`, size));
      const plans = planSlabs(
        parts,
        [
          slab([900, 600, 100], 1, kerf, "own"),
          { ...slab([400, 300, 80], 2, kerf, "old"), isSold: false, isFirst: true },
          slab([1200, 600, 50], 0, kerf, "thin"),
        ],
        { tries: 30 },
      );
      expectSoundPlans(plans, parts, kerf);
    }),
    { numRuns: 15, seed: 8 },
  );
});
