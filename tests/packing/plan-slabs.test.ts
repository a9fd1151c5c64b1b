import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planSlabs } from "../../lib/packing/plan-slabs.ts";
import { expectSoundPlans, inch, part, slab } from "./cut-cases.ts";

const inches = (...sizes: number[]): readonly number[] => sizes.map((each) => each * inch);

// Common practice, no source: a block seat 24 wide, 18 deep, 18 high, its blocks from two slabs.
const seat = [
  part("back", inches(24, 6, 18)),
  part("arm", inches(5, 12, 12), 2),
  part("seat", inches(14, 12, 6)),
];
const seatSlab = slab([36 * inch, 22 * inch, 6 * inch], 2);

describe("a block seat from slabs of 36 × 22 × 6 in", () => {
  const plans = planSlabs(seat, [seatSlab]);

  test("comes out of two slabs, and of no fewer", () => {
    expect(plans[0]).toMatchObject({ needed: 2, have: 2, lowerBound: 2, short: [] });
    expectSoundPlans(plans, seat, 0);
  });

  test("slices the arms down to their 5 in and keeps the offcuts", () => {
    const kinds = plans[0]!.used.flatMap(({ cuts }) => cuts.map(({ kind }) => kind));
    expect(kinds.filter((kind) => kind === "slice").length).toBeGreaterThanOrEqual(1);
    const thin = plans[0]!.used
      .flatMap(({ offcuts }) => offcuts)
      .filter(({ size }) => size[2]! < 30);
    expect(thin.length).toBeGreaterThanOrEqual(1);
  });

  test("names what an offcut could become", () => {
    const wish = part("loose pad", inches(12, 5, 1));
    const [plan] = planSlabs(seat, [seatSlab], { wishes: [wish] });
    expect(plan!.used.flatMap(({ offcuts }) => offcuts.map(({ use }) => use))).toContain(
      "loose pad",
    );
  });

  test("says what one slab on hand lacks and how to mend it", () => {
    const [plan] = planSlabs(seat, [{ ...seatSlab, have: 1 }]);
    expect(plan).toMatchObject({ needed: 2, have: 1 });
    expect(plan!.short.length).toBeGreaterThanOrEqual(1);
    expect(plan!.short[0]!.remedy).toContain("1 more foam");
  });
});

describe("blocks that no slab holds whole", () => {
  test("builds a thick block up of layers, full ones first", () => {
    const parts = [part("base", [500, 400, 250])];
    const plans = planSlabs(parts, [slab([1000, 500, 100])]);
    const layers = plans[0]!.used.flatMap(({ places }) => places);
    expect(layers.map(({ layer }) => layer[1])).toEqual([3, 3, 3]);
    expect(layers.map(({ size }) => Math.min(...size)).sort((a, b) => a - b)).toEqual([
      50, 100, 100,
    ]);
    expectSoundPlans(plans, parts, 0);
  });

  test("joins a long block of equal parts", () => {
    const parts = [part("bench", [1800, 400, 80])];
    const plans = planSlabs(parts, [slab([1000, 500, 80])]);
    expect(plans[0]!.used.flatMap(({ places }) => places.map(({ size }) => size[0]))).toEqual([
      900, 900,
    ]);
    expectSoundPlans(plans, parts, 0);
  });
});

describe("several kinds of slab", () => {
  test("uses the slabs on hand before buying", () => {
    const parts = [part("pad", [400, 400, 50], 2), part("step", [400, 300, 100])];
    const plans = planSlabs(parts, [
      { ...slab([1000, 500, 100], 0, 0, "new"), price: 20 },
      { ...slab([450, 420, 100], 1, 0, "old"), price: 25 },
    ]);
    const onOld = plans[1]!.used.flatMap(({ places }) => places.map((place) => place.part));
    expect(onOld).toEqual(["pad", "pad"]);
    expect(plans[0]!.needed).toBe(1);
    expectSoundPlans(plans, parts, 0);
  });
});

const side = fc.integer({ min: 40, max: 700 });
const anyBlocks = fc
  .array(fc.tuple(side, side, fc.integer({ min: 20, max: 260 }), fc.integer({ min: 1, max: 3 })), {
    minLength: 1,
    maxLength: 6,
  })
  .map((list) => list.map(([l, w, t, copies], i) => part(`b${i}`, [l, w, t], copies)));

test("every slab plan is sound, whatever the blocks and the kerf", () => {
  fc.assert(
    fc.property(anyBlocks, fc.constantFrom(0, 2, 5), (parts, kerf) => {
      const plans = planSlabs(parts, [slab([1000, 600, 100], 0, kerf)], { tries: 40 });
      expectSoundPlans(plans, parts, kerf);
    }),
    { numRuns: 25, seed: 5 },
  );
});
