// Bodies, seats and what they weigh, against the tables they were read from.
import { describe, expect, test } from "vitest";
import { agesFor } from "../../lib/checks/fits-ages.ts";
import { rules } from "../../lib/checks/rules.ts";
import { sitterFor } from "../../lib/checks/sitter-for.ts";
import { staturesFor } from "../../lib/checks/stature-for.ts";
import adults from "../../shared/tables/adults.json" with { type: "json" };
import sizes from "../../shared/tables/seat-sizes.json" with { type: "json" };
import statures from "../../shared/tables/stature-for-age.json" with { type: "json" };
import weights from "../../shared/tables/weight-for-age.json" with { type: "json" };

describe("children", () => {
  // CDC 2000 stature-for-age, statage.csv: raw rows at 24.5 and 60.5 months, boys, 50th percentile,
  // https://www.cdc.gov/growthcharts/ (86.86160934 and 109.1751441 cm)
  test.each([
    [2, 86.86160934],
    [5, 109.1751441],
  ])("the middle boy of %d is as tall as in the raw file", (age, raw) => {
    const row = statures.rows.find((one) => one.age === age);
    expect(row?.boys[1]).toBeCloseTo(raw, 1);
  });

  // The same file, whole rows: age, boys' 5th and 95th, girls' 5th and 95th percentile in cm.
  test.each([
    [3, 89.2, 101.9, 87.8, 100.8],
    [6, 107.3, 123.9, 106.9, 123.9],
    [10, 128.2, 149.9, 127.5, 149.6],
    [14, 150.5, 177.0, 149.7, 171.3],
  ])("the spread of age %d takes in both sexes", (age, boysLow, boysHigh, girlsLow, girlsHigh) => {
    const spread = staturesFor(age);
    expect(spread?.small).toBeCloseTo(10 * Math.min(boysLow, girlsLow), 6);
    expect(spread?.tall).toBeCloseTo(10 * Math.max(boysHigh, girlsHigh), 6);
  });

  test("nobody shrinks with age, and the percentiles keep their order", () => {
    for (const { rows } of [statures, weights]) {
      rows.forEach((row, index) => {
        for (const sex of [row.boys, row.girls])
          expect(sex).toEqual([...sex].sort((a, b) => a - b));
        const before = rows[index - 1];
        if (before !== undefined) {
          row.boys.forEach((value, at) => expect(value).toBeGreaterThan(before.boys[at] ?? 0));
          row.girls.forEach((value, at) => expect(value).toBeGreaterThan(before.girls[at] ?? 0));
        }
      });
    }
  });

  // CDC 2000 weight-for-age, wtage.csv: the middle of boys and girls, and the heavier 95th, in kg.
  test.each([
    [4, (16.3 + 15.9) / 2, 20.4],
    [6, (20.8 + 20.3) / 2, 27.4],
    [10, (32.1 + 33.1) / 2, 48.2],
    [16, (61.1 + 53.9) / 2, 84.3],
  ])("a sitter of %d weighs %d kg, the heavy one %d kg", (years, mass, heaviest) => {
    const sitter = sitterFor({ kind: "age", years });
    expect(sitter.mass).toBeCloseTo(mass, 9);
    expect(sitter.heaviest).toBe(heaviest);
  });

  test("a stature stands in for the age at which the middle child has it", () => {
    expect(sitterFor({ kind: "stature", stature: 1150 }).years).toBe(6);
    expect(sitterFor({ kind: "stature", stature: 1900 }).years).toBeNull();
  });
});

describe("size marks", () => {
  // Kirkhouse, EN 1729 recommended seat heights,
  // https://www.kirkhouse.co.uk/news/en-1729-recommended-seat-table-heights.html; and the Space guide
  test("marks 1 to 6 are 260 to 460 mm high", () => {
    const seen = sizes.rows.filter(({ known }) => known === "seen");
    expect(seen.map(({ mark }) => mark)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(seen.map(({ seat }) => seat)).toEqual([260, 310, 350, 380, 430, 460]);
  });

  // SATRA, spotlight 500, EN 1729-1:2015, https://www.satra.com/spotlight/article.php?id=500
  test.each([
    [0, "white", 0, 3],
    [1, "orange", 3, 4],
    [2, "violet", 4, 5],
    [3, "yellow", 6, 7],
    [4, "red", 8, 10],
    [5, "green", 11, 13],
    [6, "blue", 14, 18],
    [7, "brown", 18, 120],
  ])("mark %d is %s, for ages %d to %d", (mark, colour, from, to) => {
    expect(sizes.rows.find((row) => row.mark === mark)).toMatchObject({ colour, ages: [from, to] });
  });

  // ISO 5970:1979 had 220, 260, 300, 340, 380, 420, 460 mm (from memory: a band of one step only)
  test("no mark is a step away from the older international series", () => {
    const older = [220, 260, 300, 340, 380, 420, 460];
    for (const { seat } of sizes.rows.filter(({ known }) => known === "seen"))
      expect(Math.min(...older.map((each) => Math.abs(each - seat)))).toBeLessThanOrEqual(20);
  });

  // EN 1729-1 depth and least width by mark, from memory: bands only, and they grow with the mark.
  test("seats grow deeper and wider from mark to mark", () => {
    sizes.rows.slice(1).forEach((row, index) => {
      expect(row.depth).toBeGreaterThan(sizes.rows[index]?.depth ?? Infinity);
      expect(row.width).toBeGreaterThan(sizes.rows[index]?.width ?? Infinity);
    });
  });

  // Space guide to BS EN 1729: orange for 3 to 4, violet for 4 to 6, yellow for 6 to 8
  test.each([
    [260, 260, 3, 4],
    [310, 310, 4, 6],
    [340, 355, 6, 8],
    [255, 305, 3, 6],
  ])(
    "a seat %d to %d mm high fits ages %d to %d and is outgrown a year later",
    (low, high, from, to) => {
      expect(agesFor(low, high)).toMatchObject({ from, to });
    },
  );

  test("a pad on the floor and a bar stool have no ages", () => {
    expect(agesFor(120, 120)).toBeNull();
    expect(agesFor(700, 700)).toBeNull();
  });

  // Sellers' figures for 5 to 7 years, 12 to 14 in, copied at vdocuments.us (Community Playthings): a band
  test("six years old, 12 to 14 in, lie within an inch of the marks for six", () => {
    const six = sizes.rows.filter(({ guideAges }) => (guideAges ?? []).includes(6));
    for (const { seat } of six) {
      expect(seat).toBeGreaterThan(11 * 25.4);
      expect(seat).toBeLessThan(15 * 25.4);
    }
  });
});

describe("adults", () => {
  const row = (who: string, source: string) =>
    adults.rows.find((one) => one.who === who && one.source === source);

  // ANSUR II 2012, public raw data: men 4082, women 1986; popliteal over stature barefoot
  test.each([
    ["men", 430, 1756, 0.2446],
    ["women", 387, 1628.5, 0.2383],
  ])("the back of the knee of %s is at %d of %d mm", (who, popliteal, stature, share) => {
    expect(row(who, "ansur")?.popliteal[1]).toBe(popliteal);
    expect(popliteal / stature).toBeCloseTo(share, 2);
    expect(popliteal / stature).toBeGreaterThan(0.23);
    expect(popliteal / stature).toBeLessThan(0.255);
  });

  // Pheasant, British 19 to 65: http://tbeech.blogspot.com/2010/10/anthropemetric-considerations.html and
  // http://personal.cityu.edu.hk/meachan/online%20anthropometry/Chapter2/Ch2-16.htm (Hong Kong beside it)
  test.each([
    ["men", "pheasant", [395, 440, 490]],
    ["women", "pheasant", [355, 400, 445]],
    ["men", "hongKong", [365, 405, 445]],
    ["women", "hongKong", [325, 375, 425]],
  ])("the back of the knee of %s (%s) is at %j mm", (who, source, popliteal) => {
    expect(row(who, source)?.popliteal).toEqual(popliteal);
  });
  test.each([
    ["men", [440, 495, 550], [310, 360, 405]],
    ["women", [435, 480, 530], [310, 370, 435]],
  ])("thigh and hips of British %s are Pheasant's", (who, thigh, hips) => {
    expect(row(who, "pheasant")?.buttockPopliteal).toEqual(thigh);
    expect(row(who, "pheasant")?.hipBreadth).toEqual(hips);
  });

  // http://personal.cityu.edu.hk/meachan/online%20anthropometry/Chapter2/Ch2-11.htm: 245 and 235 mm
  test("the elbow by share of stature lies within a centimetre of Pheasant's adults", () => {
    const { share } = rules["arm-height"];
    expect(Math.abs(share * 1756 - 245)).toBeLessThan(10);
    expect(Math.abs(share * 1628.5 - 235)).toBeLessThan(10);
  });

  // Pheasant, multi-purpose seat 400 to 460 mm and at most 430 mm deep; 17 to 17 1/2 in with a table of
  // 29 in, https://www.furnituremaking.us/making-3/chair-sizes.html; 15 to 17 in deep, toprq.com
  test("adults' seats keep the published bands", () => {
    const [low, high, deep] = [
      rules["seat-low"].adult,
      rules["seat-high"].adult,
      rules["seat-deep"].adult,
    ];
    expect([low, high, deep]).toEqual([400, 460, 430]);
    expect(17 * 25.4).toBeGreaterThan(low);
    expect(17.5 * 25.4).toBeLessThan(high);
    expect(deep).toBeGreaterThanOrEqual(15 * 25.4);
    expect(deep).toBeLessThanOrEqual(17 * 25.4);
  });

  // Match rules of the literature, from memory: depth 80 to 95 % of the thigh, width from 110 % of the hips
  test("the depth advised is 80 to 95 % of Pheasant's thighs, and the width 110 % of the hips", () => {
    for (const who of ["men", "women"]) {
      const thigh = row(who, "pheasant")?.buttockPopliteal?.[1] ?? 0;
      expect(rules["seat-deep"].adult / thigh).toBeGreaterThan(0.8);
      expect(rules["seat-deep"].adult / thigh).toBeLessThan(0.95);
    }
    expect(rules["seat-narrow"].share).toBe(1.1);
  });

  // Journal of Ergonomics 2018, 3543610, table 5, primary pupils in Bangladesh: seat 327 to 407 mm, which is
  // the back of the knee of the 5th girl and 95th boy and 25 mm of shoe; depth 292 mm,
  // https://www.hindawi.com/journals/je/2018/3543610/tab5/
  test("a primary pupil's seat of the literature lies among marks 2 to 5", () => {
    expect(agesFor(327, 327)?.marks).toEqual([2]);
    expect(agesFor(407, 407)?.marks).toEqual([5]);
    const depths = sizes.rows
      .filter(({ mark }) => mark >= 2 && mark <= 5)
      .map(({ depth }) => depth);
    expect(Math.min(...depths)).toBeLessThan(292);
    expect(Math.max(...depths)).toBeGreaterThan(292);
  });
});
