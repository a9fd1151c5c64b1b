import { describe, expect, test } from "vitest";
import { divideBlock } from "../../lib/packing/divide-block.ts";
import { planBoards } from "../../lib/packing/plan-boards.ts";
import { planSlabs } from "../../lib/packing/plan-slabs.ts";
import type { CutPlan, Part } from "../../lib/packing/types.ts";
import { randomBelow, seededRandom } from "../../lib/plane/random.ts";
import { board, expectSoundPlans, inch, part, slab } from "./cut-cases.ts";
import { cheapestCuts } from "./cut-truth.ts";

/** Whole numbers from a seed, both ends counted. */
function numbersFrom(seed: number): (low: number, high: number) => number {
  const random = seededRandom(seed);
  return (low, high) => low + randomBelow(random, high - low + 1);
}

const seeds = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i + 1);

type Sold = { readonly have: number; readonly price: number | null; readonly isSold: boolean };

/** What a plan buys for, at a price for each kind of stock. */
const boughtFor = (plans: readonly CutPlan[], costs: readonly number[]): number =>
  plans.reduce(
    (sum, { needed, have }, i) => sum + (needed > have ? (needed - have) * costs[i]! : 0),
    0,
  );

/** Prices where every sold kind has one, else what it holds. */
const costsOf = (stocks: readonly Sold[], contents: readonly number[]): readonly number[] => {
  const isPriced = stocks.every(({ price, isSold }) => !isSold || price !== null);
  return stocks.map(({ price, isSold }, i) =>
    isSold ? ((isPriced ? price : null) ?? contents[i]!) : Infinity,
  );
};

/** One to five blocks that every kind holds whole, so that nothing is glued up. */
function smallSlabJob(seed: number) {
  const between = numbersFrom(seed);
  const kerf = 3 * between(0, 1);
  const isPriced = between(0, 1) === 1;
  const kinds = between(1, 2);
  const sizes = (
    [
      [700, 500, 100],
      [500, 400, 100],
    ] as const
  ).slice(0, kinds);
  const slabs = sizes.map((size, i) => ({
    ...slab(size, between(0, i === 0 ? 2 : 1), kerf, `kind ${i + 1}`),
    price: isPriced ? between(6, 30) : null,
    isSold: i === 0 || between(0, 2) > 0,
  }));
  const [long, wide] = kinds === 1 ? [690, 490] : [490, 390];
  const parts = Array.from({ length: between(1, 5) }, (_, i) =>
    part(`block ${i + 1}`, [between(120, long), between(120, wide), between(25, 100)]),
  );
  return { kerf, slabs, parts };
}

describe("small jobs against every way to cut them", () => {
  test.each(seeds(60))("blocks from slabs, job %i", (seed) => {
    const { kerf, slabs, parts } = smallSlabJob(seed);
    const plans = planSlabs(parts, slabs);
    const costs = costsOf(
      slabs,
      slabs.map(({ size: [l, w, t] }) => (l * w * t) / 1e6),
    );
    const stocks = slabs.map(({ size, have }, i) => ({ size, have, cost: costs[i]! }));
    const truth = cheapestCuts(
      parts.map(({ size }) => size),
      stocks,
      kerf,
    )!;
    expect(boughtFor(plans, costs)).toBeCloseTo(truth.cost, 6);
    if (slabs.length === 1) {
      expect(plans[0]).toMatchObject({ needed: truth.pieces, lowerBound: truth.pieces });
    } else expect(plans[0]!.buys!.bound).toBeCloseTo(truth.cost, 6);
    expectSoundPlans(plans, parts, kerf);
  });

  test.each(seeds(120))("lengths from boards, job %i", (seed) => {
    const between = numbersFrom(seed);
    const kerf = 3 * between(0, 1);
    const isPriced = between(0, 1) === 1;
    const lengths = [2400, between(900, 3000)].slice(0, between(1, 2));
    const boards = lengths.map((length, i) => ({
      ...board(length, kerf, between(0, 2), `length ${i + 1}`),
      price: isPriced ? between(3, 20) : null,
      isSold: true,
    }));
    const longest = Math.min(1500, ...lengths);
    const parts = Array.from({ length: between(1, 8) }, (_, i) =>
      part(`rail ${i + 1}`, [between(100, longest)]),
    );
    const plans = planBoards(parts, boards);
    const costs = costsOf(boards, lengths);
    const stocks = boards.map(({ length, have }, i) => ({ size: [length], have, cost: costs[i]! }));
    const truth = cheapestCuts(
      parts.map(({ size }) => size),
      stocks,
      kerf,
    )!;
    expect(boughtFor(plans, costs)).toBeCloseTo(truth.cost, 6);
    if (boards.length === 1) {
      expect(plans[0]).toMatchObject({ needed: truth.pieces, lowerBound: truth.pieces });
    } else expect(plans[0]!.buys!.bound).toBeLessThanOrEqual(truth.cost + 1e-6);
    expectSoundPlans(plans, parts, kerf);
  });
});

describe("thinner slabs on hand", () => {
  const mat = (have: number) => ({ ...slab([1000, 500, 50], have, 0, "mat"), isSold: false });
  const sold = { ...slab([1200, 600, 100], 0, 0, "new"), price: 20 };

  // Mats of 5 cm used to stay in the cupboard while a slab of 10 cm was bought for every seat.
  test("are glued up two deep before a thick one is bought", () => {
    const parts = [part("seat", [600, 400, 100])];
    const plans = planSlabs(parts, [sold, mat(2)]);
    expect(plans.map(({ needed, short }) => [needed, short.length])).toEqual([
      [0, 0],
      [2, 0],
    ]);
    expect(plans[1]!.used.flatMap(({ places }) => places.map(({ layer }) => layer[1]))).toEqual([
      2, 2,
    ]);
    expectSoundPlans(plans, parts, 0);
  });

  test("are not glued up where a thick one is bought all the same", () => {
    const plans = planSlabs([part("seat", [600, 400, 100], 3)], [sold, mat(2)]);
    expect(plans.map(({ needed }) => needed)).toEqual([1, 0]);
  });

  test("save as many thick slabs of a class set as they hold", () => {
    // By hand: three seats are a slab of 1200 × 600, two mats are one seat; 12 mats save two slabs.
    const parts = [part("seat", [600, 400, 100], 12)];
    const plans = planSlabs(parts, [sold, mat(12)]);
    expect(plans[0]).toMatchObject({ needed: 2, buys: { cost: 40 } });
    expectSoundPlans(plans, parts, 0);
  });

  test.each(seeds(25))("buy the least of all ways to glue up, job %i", (seed) => {
    const between = numbersFrom(3000 + seed);
    const parts = Array.from({ length: between(1, 3) }, (_, i) =>
      part(`block ${i + 1}`, [between(200, 600), between(200, 400), between(60, 100)]),
    );
    const slabs = [{ ...sold, size: [700, 500, 100] as const }, mat(between(1, 3))];
    const stocks = slabs.map(({ size, have }, i) => ({ size, have, cost: [20, Infinity][i]! }));
    let truth = Infinity;
    for (let choice = 0; choice < 2 ** parts.length; choice++) {
      const blocks = parts.flatMap(({ size }, i) =>
        (choice >> i) % 2 === 0 ? [size] : divideBlock(size, [slabs[1]!.size]),
      );
      truth = Math.min(truth, cheapestCuts(blocks, stocks, 0)?.cost ?? Infinity);
    }
    const plans = planSlabs(parts, slabs);
    expect(boughtFor(plans, [20, Infinity])).toBe(truth);
    expect(plans[0]!.buys!.bound).toBeCloseTo(truth, 6);
    expectSoundPlans(plans, parts, 0);
  });
});

/** One to six blocks, some thicker than a slab, and too little on hand for many of them. */
function tightSlabJob(seed: number) {
  const between = numbersFrom(1000 + seed);
  const kerf = 3 * between(0, 1);
  const sizes = (
    [
      [700, 500, 100],
      [500, 400, 50],
    ] as const
  ).slice(0, between(1, 2));
  const slabs = sizes.map((size, i) => ({
    ...slab(size, between(1, 2), kerf, `kind ${i + 1}`),
    isSold: i === 0 || between(0, 1) === 1,
  }));
  const parts = Array.from({ length: between(1, 6) }, (_, i) =>
    part(`block ${i + 1}`, [between(120, 500), between(120, 390), between(25, 110)]),
  );
  return { kerf, slabs, parts };
}

const buysNothing = (plans: readonly CutPlan[]): boolean =>
  plans.every(({ needed, have }) => needed <= have);

interface Words {
  readonly say: (length: number) => string;
  readonly read: (length: string) => number;
}

/** The parts once the trim of a remedy is done; null where it names none. */
function trimmedAsTold(
  remedy: string,
  parts: readonly Part[],
  { say, read }: Words,
): readonly Part[] | null {
  const told = /make (?:the (.+) side of (.+)|every (.+) side) shorter by (.+)/.exec(remedy);
  if (told === null) return null;
  const [, side, name, shared, by] = told;
  return parts.map((each) => {
    if (name !== undefined && each.label !== name) return each;
    const isLong = (size: number): boolean => say(size) === (side ?? shared);
    const first = each.size.findIndex(isLong);
    return {
      ...each,
      size: each.size.map((size, i) =>
        (name === undefined ? isLong(size) : i === first) ? size - read(by!) : size,
      ),
    };
  });
}

describe("following the advice for what does not fit", () => {
  // Lengths are printed to 1/8 in as well: a trim rounded down would fall short of what was tried.
  const ways = [
    { unit: "mm", step: 1, say: (mm: number) => `${Math.round(mm)} mm` },
    { unit: "in", step: inch / 8, say: (mm: number) => `${Math.round((8 * mm) / inch) / 8} in` },
  ] as const;
  test.each(ways)("needs no slab beyond the advice, in $unit", ({ unit, step, say }) => {
    const read = (text: string): number => parseFloat(text) * (unit === "in" ? inch : 1);
    const tried = { more: 0, piece: 0, trim: 0 };
    for (const seed of seeds(70)) {
      const { kerf, slabs, parts } = tightSlabJob(seed);
      const remedy = planSlabs(parts, slabs, { say, step }).flatMap(({ short }) => short)[0]
        ?.remedy;
      if (remedy === undefined) continue;
      const told = `job ${seed}: ${remedy}`;
      const more = slabs.map((each) => {
        const count = new RegExp(`(\\d+) more ${each.label}\\b`).exec(remedy)?.[1] ?? "0";
        return { ...each, have: each.have + Number(count) };
      });
      expect(buysNothing(planSlabs(parts, more)), told).toBe(true);
      tried.more += 1;
      const piece = /a piece of (.+) × (.+) × (.+) or larger/.exec(remedy);
      if (piece !== null) {
        const [l = 1, w = 1, t = 1] = piece.slice(1, 4).map(read);
        const odd = { ...slab([l, w, t], 1, kerf, "odd"), isSold: false };
        expect(buysNothing(planSlabs(parts, [...slabs, odd])), told).toBe(true);
        tried.piece += 1;
      }
      const trimmed = trimmedAsTold(remedy, parts, { say, read });
      if (trimmed !== null) {
        expect(buysNothing(planSlabs(trimmed, slabs)), told).toBe(true);
        tried.trim += 1;
      }
    }
    for (const count of Object.values(tried)) expect(count).toBeGreaterThan(0);
  });

  test("the lengths of boards too, and no shorter trim of that length would do", () => {
    const say = (mm: number): string => `${mm} mm`;
    let trims = 0;
    for (const seed of seeds(300)) {
      const between = numbersFrom(2000 + seed);
      const boards = [board(2400, 3, between(1, 2))];
      const parts = Array.from({ length: between(2, 7) }, (_, i) =>
        part(`rail ${i + 1}`, [between(300, 1500)]),
      );
      const plans = planBoards(parts, boards, { say, step: 1 });
      const remedy = plans[0]!.short[0]?.remedy;
      if (remedy === undefined) continue;
      const more = boards.map((each) => ({ ...each, have: plans[0]!.needed }));
      expect(buysNothing(planBoards(parts, more))).toBe(true);
      const trimmed = trimmedAsTold(remedy, parts, { say, read: parseFloat });
      if (trimmed === null) continue;
      trims += 1;
      expect(buysNothing(planBoards(trimmed, boards)), remedy).toBe(true);
      const lessTrimmed = trimmed.map((each, i) =>
        each.size[0] === parts[i]!.size[0] ? each : { ...each, size: [each.size[0]! + 1] },
      );
      expect(buysNothing(planBoards(lessTrimmed, boards)), remedy).toBe(false);
    }
    expect(trims).toBeGreaterThan(5);
  });
});
