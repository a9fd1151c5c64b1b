import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nestedArea } from "../../lib/packing/nest-sheets.ts";
import { planSheets } from "../../lib/packing/plan-sheets.ts";
import type { CutPlan, Part } from "../../lib/packing/types.ts";
import type { Polygon } from "../../lib/plane/types.ts";
import { growPolygon } from "../../lib/plane/grow-polygon.ts";
import { overlapArea } from "../../lib/plane/clip-polygons.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import { part, sheet } from "./cut-cases.ts";

const shaped = (id: string, outline: Polygon, copies = 1, canTurn = true): Part => ({
  ...part(
    id,
    [Math.max(...outline.map(([x]) => x)), Math.max(...outline.map(([, y]) => y))],
    copies,
    canTurn,
  ),
  outline,
});

const corner: Polygon = [
  [0, 0],
  [600, 0],
  [0, 400],
];

/** Nothing overlaps or hangs off, a kerf lies between, and every copy is there once. */
function expectNested(plans: readonly CutPlan[], parts: readonly Part[], kerf: number): void {
  const names = plans.flatMap(({ used }) =>
    used.flatMap(({ places }) => places.map(({ part: id, copy }) => `${id} ${copy}`)),
  );
  const wanted = parts.flatMap(({ id, copies }) =>
    Array.from({ length: copies }, (_, i) => `${id} ${i + 1}`),
  );
  expect([...names].sort()).toEqual([...wanted].sort());
  for (const { used } of plans) {
    for (const { size, places } of used) {
      const [length = 0, width = 0] = size;
      const bed: Polygon = [
        [0, 0],
        [length, 0],
        [length, width],
        [0, width],
      ];
      // A little less than the kerf, so that touching cuts are not taken for an overlap.
      const grown = places.map(({ outline }) => growPolygon(outline!, kerf / 2 - 0.03));
      places.forEach(({ outline }, i) => {
        expect(polygonArea(outline!) - overlapArea([outline!], [bed])).toBeLessThan(1e-2);
        for (const other of grown.slice(i + 1)) {
          expect(overlapArea([grown[i]!], [other])).toBeLessThan(1e-2);
        }
      });
    }
  }
}

describe("parts cut freely from sheets", () => {
  // By construction: two right triangles fill the rectangle, so that one sheet is the optimum.
  test("two halves of a rectangle come from one sheet, where right-across cuts take two", () => {
    const parts = [shaped("corner", corner, 2)];
    const [across] = planSheets(parts, [sheet([600, 400])]);
    const [free] = planSheets(parts, [sheet([600, 400], { cutting: "free" })]);
    expect(across!.needed).toBe(2);
    expect(free).toMatchObject({ needed: 1, lowerBound: 1, short: [] });
    expectNested([free!], parts, 0);
  });

  test("the kerf parts them: then one sheet no longer holds both", () => {
    const parts = [shaped("corner", corner, 2)];
    const [tight] = planSheets(parts, [sheet([600, 400], { cutting: "free", kerf: 3 })]);
    expect(tight!.needed).toBe(2);
    const [wide] = planSheets(parts, [sheet([612, 406], { cutting: "free", kerf: 3 })]);
    expect(wide!.needed).toBe(1);
    expectNested([wide!], parts, 3);
  });

  test("grain keeps the first size along the sheet", () => {
    const leaf: Polygon = [
      [0, 0],
      [300, 0],
      [260, 90],
      [40, 90],
    ];
    const parts = [shaped("leaf", leaf, 4, false)];
    const [plan] = planSheets(parts, [sheet([640, 200], { cutting: "free", grain: "along" })]);
    for (const { size } of plan!.used[0]!.places) expect(size).toEqual([300, 90]);
    expectNested([plan!], parts, 0);
  });

  test("right-across cuts stay where freedom saves nothing", () => {
    const [plan] = planSheets(
      [part("shelf", [300, 200], 2)],
      [sheet([700, 400], { cutting: "free" })],
    );
    expect(plan!.used[0]!.cuts.every(({ kind }) => kind !== "free")).toBe(true);
  });

  test("what is on hand is filled first, and an old sheet is never bought", () => {
    const parts = [shaped("corner", corner, 5)];
    const plans = planSheets(parts, [
      { ...sheet([600, 400], { id: "old", have: 1, cutting: "free" }), isSold: false },
      sheet([600, 400], { cutting: "free" }),
    ]);
    expect(plans.map(({ needed }) => needed)).toEqual([1, 2]);
    expectNested(plans, parts, 0);
  });
});

describe("holes", () => {
  const ring: Part = {
    ...part("ring", [200, 100]),
    holes: [
      [
        [20, 10],
        [60, 10],
        [60, 30],
        [20, 30],
      ],
    ],
  };

  test("are cut before the outline, and turn with their part", () => {
    const [plan] = planSheets([ring], [sheet([100, 220])]);
    const [place] = plan!.used[0]!.places;
    expect(place!.size).toEqual([100, 200]);
    // A quarter turn to the left takes (20, 10) to (100 − 10, 20).
    expect(place!.holes![0]).toContainEqual([90, 20]);
    expect(plan!.used[0]!.cuts.map(({ kind }) => kind)).toEqual(["rip", "free"]);
  });

  test("take their area off the bound", () => {
    expect(nestedArea([ring])).toBe(200 * 100 - 40 * 20);
  });
});

const point = fc.tuple(fc.integer({ min: 60, max: 300 }), fc.integer({ min: 40, max: 200 }));

test("every nested plan is sound", () => {
  fc.assert(
    fc.property(
      fc.array(point, { minLength: 1, maxLength: 5 }),
      fc.constantFrom(0, 3),
      (list, kerf) => {
        const parts = list.map(([x, y], i) =>
          shaped(
            `p${i}`,
            [
              [0, 0],
              [x, 0],
              [x, y / 2],
              [x / 3, y],
              [0, y],
            ],
            2,
          ),
        );
        const plans = planSheets(parts, [sheet([500, 320], { cutting: "free", kerf })], {
          tries: 20,
        });
        if (plans[0]!.used.some(({ cuts }) => cuts.some(({ kind }) => kind !== "free"))) return;
        expectNested(plans, parts, kerf);
      },
    ),
    { numRuns: 8, seed: 2 },
  );
});

// Outlines cut freely once came from 59 straight cuts, whose numbers hid the parts.
test("takes no straight cuts before outlines where that needs no more sheets", () => {
  const leaf = shaped(
    "leaf",
    [
      [10, 0],
      [70, 10],
      [90, 50],
      [70, 90],
      [10, 100],
      [0, 50],
    ],
    6,
  );
  const free = sheet([420, 297], { kerf: 1, cutting: "free" });
  const [plan] = planSheets([leaf, part("tag", [50, 30], 8)], [free]);
  const kinds = new Set(plan!.used.flatMap(({ cuts }) => cuts.map(({ kind }) => kind)));
  expect(plan!.needed).toBe(1);
  expect([...kinds]).toEqual(["free"]);
});
