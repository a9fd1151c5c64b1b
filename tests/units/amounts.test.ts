import { describe, expect, test } from "vitest";
import * as format from "../../lib/units/format-amounts.ts";
import { parseDensity, parseHardness, parsePercent } from "../../lib/units/parse-amounts.ts";
import { parsePrice } from "../../lib/units/parse-price.ts";
import type { Reading } from "../../lib/units/types.ts";

const valueOf = <T>(reading: Reading<T>): T | string =>
  reading.ok ? reading.value : reading.fault;

describe("reading a density", () => {
  // http://worldwidefoam.com/worldwide-foam/news/density-cross-reference: lb/ft³ to the whole kg/m³.
  test.each([
    [1, 16],
    [1.5, 24],
    [1.7, 27],
    [1.9, 30],
    [2, 32],
    [2.2, 35],
    [2.8, 45],
    [3, 48],
    [4, 64],
  ])("%d lb/ft3 is %d kg/m3", (pounds, kilograms) => {
    const value = valueOf(parseDensity(`${pounds} lb/ft3`));
    expect(Math.round(Number(value))).toBe(kilograms);
  });

  // NIST SP 811 (2008), appendix B.8: pound per cubic foot = 16.018 46 kg/m³.
  test("1 lb/ft3 agrees with NIST to the figures it prints", () => {
    expect(valueOf(parseDensity("1 lb/ft³"))).toBeCloseTo(16.01846, 5);
  });

  test.each([
    ["35 kg/m3", 35],
    ["35kg/m³", 35],
    ["35", "35 has no unit"],
    [35, "35 has no unit"],
    ["35 kg", "kg is not a unit for this"],
    ["heavy", '"heavy" does not start with a number'],
    ["0 kg/m3", "the amount is zero"],
  ] as const)("%s reads as %s", (text, result) => {
    expect(valueOf(parseDensity(text))).toBe(result);
  });
});

describe("reading hardness, percentages and prices", () => {
  test("hardness is in newtons", () => {
    expect(valueOf(parseHardness("150 N"))).toBe(150);
    // NIST SP 811 (2008), appendix B.8: pound-force = 4.448 222 N.
    expect(valueOf(parseHardness("35 lb"))).toBeCloseTo(35 * 4.448222, 4);
  });

  test.each([
    ["3 %", 0.03],
    ["3%", 0.03],
    ["2,5 %", 0.025],
    ["0 %", 0],
    [3, "3 has no unit"],
    ["100 %", "the percentage is 100 or more"],
    ["-3 %", '"-3 %" does not start with a number'],
  ] as const)("the percentage %s reads as %s", (text, result) => {
    expect(valueOf(parsePercent(text))).toBe(result);
  });

  test.each([
    ["14 per m", "metre", 14],
    ["9 each", "each", 9],
    [9, "each", 9],
    ["4,50 each", "each", 4.5],
    ["free", "each", '"free" is not a price'],
    ["£9", "each", "a price has no currency sign"],
    ["9 each", "metre", 'this is sold by the length, not "each"'],
    ["9 per m", "each", 'this is sold by the piece, not "per m"'],
    ["9 per dozen", "each", '"per dozen" is not a way to sell'],
    [-1, "each", "-1 is not a price"],
  ] as const)("the price %s by the %s reads as %s", (text, basis, result) => {
    expect(valueOf(parsePrice(text, basis))).toBe(result);
  });

  test("a price by the yard becomes one by the metre", () => {
    expect(valueOf(parsePrice("9.144 per yd", "metre"))).toBeCloseTo(10, 9);
  });
});

describe("printing amounts", () => {
  test("follows the unit of the project", () => {
    expect(format.formatArea(1_250_000, "cm")).toBe("1.25 m²");
    expect(format.formatArea(144 * 25.4 ** 2, "in")).toBe("1 ft²");
    expect(format.formatVolume(40_000_000, "mm")).toBe("40 l");
    expect(format.formatPercent(0.785)).toBe("79 %");
    expect(format.formatPercent(0.785, 1)).toBe("78.5 %");
    expect(format.formatPrice(14)).toBe("14.00");
    expect(format.formatDensity(28.8, "in")).toBe("1.8 lb/ft³");
    expect(format.formatMass(0.35, "cm")).toBe("350 g");
  });

  // Worked by hand: 24 × 24 × 4 in at 1.8 lb/ft³ is 2.40 lb = 1.09 kg.
  test("the mass of a worked block reads the same both ways", () => {
    const density = valueOf(parseDensity("1.8 lb/ft3"));
    const kilograms = Number(density) * 24 * 24 * 4 * 0.0254 ** 3;
    expect(kilograms).toBeCloseTo(1.09, 2);
    expect(format.formatMass(kilograms, "in")).toBe("2.4 lb");
    expect(format.formatMass(kilograms, "cm")).toBe("1.1 kg");
  });

  // https://www.foam-industries.com/news/how-much-does-my-foam-part-weigh: 12 × 12 × 4 in at
  // 1.7 lb/ft³ is 0.567 lb, which is 9.1 oz.
  test("less than a pound prints in ounces", () => {
    expect(format.formatMass(0.567 * 0.45359237, "in")).toBe("9.1 oz");
  });
});
