import { describe, expect, test } from "vitest";
import { planLengths } from "../../lib/packing/plan-lengths.ts";
import { expectSoundStock, part } from "./cut-cases.ts";

const roll = (have: readonly number[] = [], lengths: readonly number[] = []) => ({
  id: "webbing",
  label: "webbing",
  lengths,
  have,
  price: null,
});

describe("webbing, cord and chain", () => {
  test("buys one length off the roll when nothing is on hand", () => {
    const plan = planLengths([part("strap", [340], 5), part("loop", [120], 2)], roll())!;
    expect(plan.needed).toBe(1);
    expect(plan.used[0]!.size).toEqual([1940]);
    expect(plan.used[0]!.cuts).toHaveLength(6);
    expect(plan.yield).toBe(1);
    expectSoundStock(plan.used[0]!, 0);
  });

  test("cuts what is on hand so that least is bought", () => {
    // By hand: 700 holds 400 + 300, 620 holds 2 × 300; one 400 is left to buy.
    const plan = planLengths([part("a", [400], 2), part("b", [300], 3)], roll([620, 700]))!;
    const bought = plan.sizes!.reduce((sum, { buy, size }) => sum + buy * size[0]!, 0);
    expect(bought).toBe(400);
    expect(plan.buys).toMatchObject({ cost: 400, bound: 400 });
  });

  test("takes the lengths sold that come to least", () => {
    const plan = planLengths([part("a", [900], 3)], roll([], [1000, 2000]))!;
    expect(plan.sizes!.map(({ size, buy }) => [size[0], buy])).toEqual([
      [1000, 3],
      [2000, 0],
    ]);
  });
});
