import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planSheets } from "../../lib/packing/plan-sheets.ts";
import { seededRandom, shuffle } from "../../lib/plane/random.ts";
import type { Part } from "../../lib/packing/types.ts";
import { expectSoundPlans, part, sheet } from "./cut-cases.ts";

/**
 * Cut a sheet right across at random, again and again: the pieces fill it exactly, so that one
 * sheet is the known optimum.
 */
function cutAtRandom(length: number, width: number, count: number, seed: number): Part[] {
  const random = seededRandom(seed);
  let pieces: (readonly [number, number])[] = [[length, width]];
  while (pieces.length < count) {
    const [largest, ...rest] = [...pieces].sort((a, b) => b[0] * b[1] - a[0] * a[1]);
    const [l, w] = largest!;
    const share = 0.25 + random() / 2;
    const isAcross = l > w;
    const near = Math.round((isAcross ? l : w) * share);
    const halves: (readonly [number, number])[] = isAcross
      ? [
          [near, w],
          [l - near, w],
        ]
      : [
          [l, near],
          [l, w - near],
        ];
    pieces = [...rest, ...halves];
  }
  return shuffle(pieces, random).map((size, i) => part(`p${i}`, size));
}

describe("right-across cuts of one sheet", () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])(
    "puts nine pieces cut at random (%i) together again",
    (seed) => {
      const parts = cutAtRandom(1220, 610, 9, seed);
      const [plan] = planSheets(parts, [sheet([1220, 610])]);
      expect(plan).toMatchObject({ needed: 1, lowerBound: 1 });
      expectSoundPlans([plan!], parts, 0);
    },
  );

  test("counts the kerf: the same pieces need a second sheet as soon as the saw takes 3 mm", () => {
    const parts = cutAtRandom(1220, 610, 9, 1);
    const [plan] = planSheets(parts, [sheet([1220, 610], { kerf: 3 })]);
    expect(plan!.needed).toBe(2);
  });
});

describe("grain", () => {
  const tall = [part("door", [900, 300], 2)];

  test("turns parts only where neither part nor sheet has a grain", () => {
    const lies = (grain: "along" | "across" | "none", canTurn = true) =>
      planSheets([part("door", [500, 300], 1, canTurn)], [sheet([1000, 1000], { grain })])[0]!
        .used[0]!.places[0]!.size;
    expect(lies("along")).toEqual([500, 300]);
    expect(lies("across")).toEqual([300, 500]);
    expect(lies("none", false)).toEqual([500, 300]);
  });

  test("leaves out parts that fit no sheet their way round and names them", () => {
    const [plan] = planSheets(tall, [sheet([800, 1000], { grain: "along" })]);
    expect(plan!.short.map((each) => each.part)).toEqual(["door"]);
    expect(planSheets(tall, [sheet([800, 1000])])[0]!.short).toEqual([]);
  });
});

test("a free outline is cut as its rectangle first, then round", () => {
  const lid: Part = {
    ...part("lid", [400, 300]),
    outline: [
      [0, 0],
      [400, 0],
      [400, 150],
      [200, 300],
      [0, 150],
    ],
  };
  const [plan] = planSheets([lid], [sheet([300, 500])]);
  const [used] = plan!.used;
  expect(used!.cuts.map(({ kind }) => kind)).toEqual(["rip", "free"]);
  for (const [x, y] of used!.places[0]!.outline!) {
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x).toBeLessThanOrEqual(300);
    expect(y).toBeLessThanOrEqual(400);
  }
});

const side = fc.integer({ min: 60, max: 900 });
const anyParts = fc
  .array(fc.tuple(side, side, fc.integer({ min: 1, max: 3 })), { minLength: 1, maxLength: 8 })
  .map((list) => list.map(([l, w, copies], i) => part(`p${i}`, [l, w], copies)));

test("every sheet plan is sound, and kerf added to parts and sheet alike changes no count", () => {
  fc.assert(
    fc.property(anyParts, fc.constantFrom(0, 3), (parts, kerf) => {
      const plans = planSheets(parts, [sheet([1220, 1000], { kerf })], { tries: 60 });
      expectSoundPlans(plans, parts, kerf);
      const wide = parts.map((each) => ({ ...each, size: each.size.map((size) => size + kerf) }));
      const plain = planSheets(wide, [sheet([1220 + kerf, 1000 + kerf])], { tries: 60 });
      expect(plain[0]!.needed).toBe(plans[0]!.needed);
    }),
    { numRuns: 20, seed: 9 },
  );
});
