import { describe, expect, test } from "vitest";
import { edgeLoadMargin } from "../../lib/checks/edge-load-margin.ts";
import { isYoungerThan } from "../../lib/checks/is-younger-than.ts";
import { rules } from "../../lib/checks/rules.ts";
import { seatFor } from "../../lib/checks/seat-for.ts";
import { statureFor } from "../../lib/checks/stature-for.ts";
import { tipAngle } from "../../lib/checks/tip-angle.ts";
import sizes from "../../shared/tables/seat-sizes.json" with { type: "json" };

const degrees = (radians: number) => (radians * 180) / Math.PI;

describe("figures published elsewhere", () => {
  // Home workshop forum, https://www.homemadetools.net/forum/ post 138948
  test("a centre 1 ft up over a 3 ft base tips at 56.3°", () => {
    expect(degrees(tipAngle(1.5, 1))).toBeCloseTo(56.3, 1);
  });

  test("a block 300 deep with its centre 200 up tips at 36.9° (worked by hand)", () => {
    expect(degrees(tipAngle(150, 200))).toBeCloseTo(36.9, 1);
  });

  // EN 1022 forward test: 600 N down at 60 mm from the edge, 20 N sideways, on a block 260 mm high: 36 000
  // against 5 200 N mm even without weight, and with the load beyond the base the sign turns. Loads from
  // https://en.tentangkayu.com/2022/06/chair-stability-tests-based-on-en-1022.html, moments worked by hand.
  test("a full-depth block 260 high stands even when it weighs nothing", () => {
    const block = { down: 600, push: 20, height: 260, weight: 0, toCentre: 200 };
    expect(edgeLoadMargin({ ...block, inside: 60 })).toBe(36_000 - 5_200);
    expect(edgeLoadMargin({ ...block, inside: -10 })).toBeLessThan(0);
  });

  // ISO 7174-1:1988, 600 N at 50 mm from the edge; rearward at 175 mm before the back, push 300 mm above the seat,
  // https://www.mealir.com/iso-7174-1-1988-pdf-download-furniture-chairs-determination-of-stability-part-1-upright-chairs-and-stools.html
  test("the loads and their places are those of ISO 7174-1", () => {
    expect(rules["tips-at-edge"]).toMatchObject({ down: 600, inset: 50, sideways: 20 });
    expect(rules["tips-back"]).toMatchObject({ forward: 175, above: 300 });
  });

  // CDC 2000 stature for age, 50th percentile, https://www.cdc.gov/growthcharts/: boys, girls, in cm
  test.each([
    [2, 86.9, 85.4],
    [4, 102.5, 101.0],
    [6, 115.7, 115.0],
    [11, 143.7, 144.3],
    [18, 176.2, 163.1],
  ])("the middle child of %d is as tall as the smaller of %d and %d cm", (years, boys, girls) => {
    expect(statureFor(years)).toBeCloseTo(Math.min(boys, girls) * 10, 9);
  });

  test("half years go by the birthday before, and from 19 on the sitter is an adult", () => {
    expect(statureFor(6.5)).toBe(statureFor(6));
    expect(statureFor(19)).toBeNull();
    expect(seatFor({ kind: "age", years: 30 })).toMatchObject(seatOnly(seatFor({ kind: "adult" })));
  });

  // BS EN 1729 size marks, dealer guide,
  // http://space-os.co.uk/furniture-catalogue/files/assets/basic-html/page253.html
  test.each([
    [1000, 260],
    [1180, 310],
    [1250, 350],
    [1430, 380],
    [1600, 460],
    [1800, 460],
  ])(
    "a sitter %d mm tall, inside one mark or the higher of two, sits at most at %d mm",
    (stature, seat) => {
      expect(seatFor({ kind: "stature", stature }).highest).toBe(seat);
    },
  );

  // Sellers' figures collected at reference.com: 8 to 9 in for two to three years
  test("a two year old sits within 25 mm of the sellers' 8 to 9 in", () => {
    const { highest } = seatFor({ kind: "age", years: 2 });
    expect(highest).toBeGreaterThan(8 * 25.4 - 25);
    expect(highest).toBeLessThan(9 * 25.4 + 25);
  });

  // Mid popliteal over mid stature of the marks lies in 0.25 to 0.27; seat over popliteal near 1
  test.each(sizes.rows.filter(({ known }) => known === "seen"))(
    "mark $mark keeps the proportions of a body",
    ({ stature, popliteal, seat }) => {
      const middle = ([from = 0, to = 0]: readonly number[]) => (from + to) / 2;
      expect(middle(popliteal) / middle(stature)).toBeGreaterThan(0.25);
      expect(middle(popliteal) / middle(stature)).toBeLessThan(0.27);
      expect(seat / middle(popliteal)).toBeGreaterThan(0.97);
      expect(seat / middle(popliteal)).toBeLessThan(1.05);
    },
  );

  // Canada Toys Regulations SOR/2011-17, Schedule 1: floor at 45°, so depths differ by the diameter.
  // 16 CFR 1501.4 has 1.25 in across and 2.25 in at the deepest.
  test("the small-parts cylinder is the same in both rules", () => {
    const { diameter, depth } = rules["small-parts"];
    expect(depth - 25.4).toBeCloseTo(diameter, 9);
    expect(diameter).toBeCloseTo(1.25 * 25.4, 0);
    expect(depth).toBeCloseTo(2.25 * 25.4, 0);
  });

  // EN 71-1:2005+A8:2009, 5.4, http://bbs4.angui.org/thread-57987-1-1.html; CEN/TR 13387:2004, ANEC table 5
  test("cords and finger gaps carry the published limits", () => {
    expect(rules.cords).toMatchObject({ longest: 220, noose: 380, thinnest: 1.5, underYears: 3 });
    expect(rules["finger-gap"]).toMatchObject({ from: 5, mesh: 7, to: 12, shallow: 10 });
  });

  test("a stature stands in for an age", () => {
    expect(isYoungerThan(3, { kind: "stature", stature: 900 })).toBe(true);
    expect(isYoungerThan(3, { kind: "stature", stature: 950 })).toBe(false);
    expect(isYoungerThan(3, { kind: "adult" })).toBe(false);
    expect(isYoungerThan(3, null)).toBe(false);
  });
});

function seatOnly({ lowest, highest }: { lowest: number; highest: number }) {
  return { lowest, highest };
}
