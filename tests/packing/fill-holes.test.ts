import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planSheets } from "../../lib/packing/plan-sheets.ts";
import type { CutPlace, CutPlan, Part } from "../../lib/packing/types.ts";
import { growPolygon } from "../../lib/plane/grow-polygon.ts";
import { rectangleAt } from "../../lib/plane/rectangle.ts";
import type { Polygon } from "../../lib/plane/types.ts";
import { part, sheet } from "./cut-cases.ts";
import { sharedByRings } from "./overlap-oracle.ts";

/** A frame with one window in its middle. */
const frame = (
  size: readonly [number, number],
  bar: number,
  { id = "frame", copies = 1, canTurn = true } = {},
): Part => ({
  ...part(id, size, copies, canTurn),
  holes: [rectangleAt(bar, bar, size[0] - 2 * bar, size[1] - 2 * bar)],
});

const ringsOf = ({ outline, holes = [] }: CutPlace): readonly Polygon[] => [outline!, ...holes];

/** By another library: no two parts share area, and none comes nearer another than the kerf. */
function expectApart(plan: CutPlan, kerf: number): void {
  for (const { places, size } of plan.used) {
    const bed = rectangleAt(0, 0, size[0]!, size[1]!);
    places.forEach((one, i) => {
      const own = sharedByRings([one.outline!], [one.outline!]);
      expect(sharedByRings([one.outline!], [bed])).toBeCloseTo(own, 1);
      // A little less than the kerf, so that touching cuts are not taken for an overlap.
      const grown = growPolygon(one.outline!, kerf - 0.05);
      for (const two of places.slice(i + 1)) {
        expect(sharedByRings(ringsOf(one), ringsOf(two))).toBeLessThan(0.1);
        const inside = one.inHoleOf !== undefined;
        if (inside) expect(sharedByRings([grown], ringsOf(two))).toBeLessThan(0.1);
      }
    });
  }
}

/** The cut round a hole comes after all cuts of what lies in it, and before the outline round it. */
function expectInnerFirst({ used }: CutPlan): void {
  for (const { cuts, places } of used) {
    const orderOf = (ring: Polygon): number => {
      const low = [Math.min(...ring.map(([x]) => x)), Math.min(...ring.map(([, y]) => y))];
      const high = [Math.max(...ring.map(([x]) => x)), Math.max(...ring.map(([, y]) => y))];
      const box = [...low, high[0]! - low[0]!, high[1]! - low[1]!];
      const own = cuts.find(({ of }) =>
        [...of.at, ...of.size].every((value, i) => Math.abs(value - box[i]!) < 1e-3),
      );
      return own!.order;
    };
    for (const host of places) {
      for (const hole of host.holes ?? []) {
        expect(orderOf(hole)).toBeLessThan(orderOf(host.outline!));
        const isIn = (ring: Polygon): boolean =>
          sharedByRings([ring], [hole]) > sharedByRings([ring], [ring]) - 1;
        const within = places.filter((guest) => isIn(guest.outline!));
        for (const guest of within) {
          expect(orderOf(guest.outline!)).toBeLessThan(orderOf(hole));
        }
      }
    }
  }
}

const free = (size: readonly [number, number], kerf = 0, grain: "none" | "along" = "none") =>
  sheet(size, { cutting: "free", kerf, grain });

describe("parts in holes of others", () => {
  // Worked by hand: the frame fills the sheet, and its window of 400 × 300 is just four parts of
  // 200 × 150.
  test("what falls out of a window is stock: one sheet where cuts right across take two", () => {
    const parts = [frame([500, 400], 50), part("tile", [200, 150], 4)];
    const [across] = planSheets(parts, [sheet([500, 400])]);
    const [plan] = planSheets(parts, [free([500, 400])]);
    expect(across!.needed).toBe(2);
    expect(plan).toMatchObject({ needed: 1, lowerBound: 1 });
    expect(plan!.used[0]!.places.filter(({ inHoleOf }) => inHoleOf === "frame")).toHaveLength(4);
    expectApart(plan!, 0);
    expectInnerFirst(plan!);
  });

  // With a kerf of 3 four parts take 2 · 200 + 3 · 3 = 409 of the window each way with its own edges.
  test.each([
    { window: [409, 309] as const, inside: 4 },
    { window: [408, 309] as const, inside: 2 },
  ])("the kerf lies round each: $inside go into a window of $window", ({ window, inside }) => {
    const size = [window[0] + 100, window[1] + 100] as const;
    const parts = [frame(size, 50), part("tile", [200, 150], 4, false)];
    const plans = planSheets(parts, [free(size, 3, "along")]);
    const places = plans[0]!.used.flatMap((each) => each.places);
    expect(places).toHaveLength(5);
    expect(places.filter(({ inHoleOf }) => inHoleOf !== undefined)).toHaveLength(inside);
    expectApart(plans[0]!, 3);
    expectInnerFirst(plans[0]!);
  });

  test("a frame in a frame in a frame, each in the hole of the next", () => {
    const parts = [
      frame([900, 900], 40, { id: "large" }),
      frame([800, 800], 40, { id: "middle" }),
      frame([700, 700], 40, { id: "small" }),
      part("core", [600, 600]),
    ];
    const [plan] = planSheets(parts, [free([900, 900], 3)]);
    expect(plan!.used[0]!.places.map(({ part: id, inHoleOf }) => [id, inHoleOf])).toEqual([
      ["core", "small"],
      ["small", "middle"],
      ["middle", "large"],
      ["large", undefined],
    ]);
    expectApart(plan!, 3);
    expectInnerFirst(plan!);
  });

  test("grain runs the same way in the hole as outside it", () => {
    const parts = [frame([400, 300], 50, { canTurn: false }), part("slip", [190, 290], 1, false)];
    const [plan] = planSheets(parts, [free([400, 600], 0, "along")]);
    const [slip] = plan!.used.flatMap(({ places }) =>
      places.filter((each) => each.part === "slip"),
    );
    // Turned by a quarter it would go into the window of 300 × 200.
    expect(slip).toMatchObject({ size: [190, 290] });
    expect(slip!.inHoleOf).toBeUndefined();
  });

  test("sheets that are cut right across keep their windows whole", () => {
    const [plan] = planSheets(
      [frame([500, 400], 50), part("tile", [200, 150])],
      [sheet([900, 400])],
    );
    expect(plan!.used[0]!.places.every(({ inHoleOf }) => inHoleOf === undefined)).toBe(true);
  });
});

test("any frames with any parts in them are sound", () => {
  const side = fc.integer({ min: 40, max: 160 });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 4 }),
      fc.constantFrom(0, 3),
      fc.integer({ min: 1, max: 2 }),
      (sizes, kerf, copies) => {
        const parts = [
          frame([420, 320], 30, { copies }),
          ...sizes.map((size, i) => part(`p${i}`, size, 2)),
        ];
        const [plan] = planSheets(parts, [free([430, 640], kerf)], { tries: 20 });
        if (plan!.used.some(({ cuts }) => cuts.some(({ kind }) => kind !== "free"))) return;
        const count = plan!.used.reduce((sum, { places }) => sum + places.length, 0);
        expect(count).toBe(copies + 2 * sizes.length);
        expectApart(plan!, kerf);
        expectInnerFirst(plan!);
      },
    ),
    { numRuns: 10, seed: 5 },
  );
});
