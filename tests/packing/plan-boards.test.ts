import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planBoards } from "../../lib/packing/plan-boards.ts";
import { board, expectSoundPlans, inch, part } from "./cut-cases.ts";

describe("kerf on an 8 ft board (check value Z10)", () => {
  // Source: slashgear.com, "What is kerf in woodworking": an 8 ft board gives no four 2 ft pieces,
  // because three cuts of 1/8 in leave the last 3/8 in short.
  const kerf = inch / 8;

  test("gives only three whole 2 ft pieces, the fourth from a second board", () => {
    const [plan] = planBoards([part("leg", [24 * inch], 4)], [board(96 * inch, kerf)]);
    expect(plan!.needed).toBe(2);
    expect(plan!.lowerBound).toBe(2);
    expect(plan!.used.map(({ places }) => places.length).sort()).toEqual([1, 3]);
  });

  test("gives three of 2 ft and one of 23 5/8 in with three cuts and nothing over", () => {
    const parts = [part("leg", [24 * inch], 3), part("short leg", [23.625 * inch])];
    const [plan] = planBoards(parts, [board(96 * inch, kerf)]);
    expect(plan!.needed).toBe(1);
    expect(plan!.used[0]!.cuts).toHaveLength(3);
    expect(plan!.used[0]!.offcuts).toEqual([]);
    expectSoundPlans([plan!], parts, kerf);
  });

  test("would give four without a kerf", () => {
    expect(planBoards([part("leg", [24 * inch], 4)], [board(96 * inch)])[0]!.needed).toBe(1);
  });

  test("names the trim that would save the second board when one is on hand", () => {
    const say = (length: number): string => `${(length / inch).toFixed(3)} in`;
    const [plan] = planBoards([part("leg", [24 * inch], 4)], [board(96 * inch, kerf, 1)], { say });
    expect(plan!.short[0]!.part).toBe("leg");
    // By hand: three kerfs shared by four legs, 3/8 ÷ 4 = 0.094 in.
    expect(plan!.short[0]!.remedy).toMatch(
      /^Get 1 more batten, or a piece of 24.000 in or larger, or make .* leg shorter by 0\.094 in$/,
    );
  });
});

describe("parts and boards that do not go together", () => {
  test("leaves out a part longer than every board and says so", () => {
    const [plan] = planBoards([part("rail", [3000]), part("leg", [400])], [board(2400)]);
    expect(plan!.short.map((each) => each.part)).toEqual(["rail"]);
    expect(plan!.used[0]!.places.map((each) => each.part)).toEqual(["leg"]);
  });

  test("needs no board for no parts", () => {
    expect(planBoards([], [board(2400)])[0]).toMatchObject({ needed: 0, used: [], short: [] });
  });

  test("uses short boards on hand before buying a long one", () => {
    const plans = planBoards(
      [part("rail", [900], 2), part("post", [1500])],
      [board(2400, 3, 0, "long"), board(1000, 3, 2, "short")],
    );
    expect(plans.map(({ stock, needed }) => [stock, needed])).toEqual([
      ["long", 1],
      ["short", 2],
    ]);
  });
});

const anyParts = fc
  .array(fc.tuple(fc.integer({ min: 50, max: 1200 }), fc.integer({ min: 1, max: 4 })), {
    minLength: 1,
    maxLength: 8,
  })
  .map((list) => list.map(([length, copies], i) => part(`p${i}`, [length], copies)));

test("every plan is sound, and kerf added to parts and boards alike changes no count", () => {
  fc.assert(
    fc.property(anyParts, fc.constantFrom(0, 3, 3.2), (parts, kerf) => {
      const plans = planBoards(parts, [board(2400, kerf)]);
      expectSoundPlans(plans, parts, kerf);
      const wide = parts.map((each) => ({ ...each, size: [each.size[0]! + kerf] }));
      const plain = planBoards(wide, [board(2400 + kerf)]);
      expect(plain[0]!.needed).toBe(plans[0]!.needed);
    }),
    { numRuns: 60, seed: 3 },
  );
});
