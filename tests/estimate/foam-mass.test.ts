import { describe, expect, test } from "vitest";
import { foamMass } from "../../lib/estimate/foam-mass.ts";
import {
  densityFromPoundsPerCubicFoot,
  densityInPoundsPerCubicFoot,
} from "../../lib/estimate/pounds-per-cubic-foot.ts";

const inch = 25.4;
const pound = 0.45359237;
const cubicInches = (count: number) => count * inch ** 3;

// Worldwide Foam, "Density cross reference", http://worldwidefoam.com/worldwide-foam/news/density-cross-reference
const crossReference = [
  [1.5, 24],
  [1.7, 27],
  [1.9, 30],
  [2, 32],
  [2.2, 35],
  [2.8, 45],
  [3, 48],
  [4, 64],
] as const;

// Foam Industries, "How much does my foam part weigh?",
// https://www.foam-industries.com/news/how-much-does-my-foam-part-weigh
const worked = [
  { name: "a 12 × 12 × 4 in part", volume: 12 * 12 * 4, pounds: 0.56 },
  {
    name: "the same part with an 8 × 8 × 2 in pocket",
    volume: 12 * 12 * 4 - 8 * 8 * 2,
    pounds: 0.44,
  },
];

describe("foam by weight", () => {
  test.each(crossReference)("%d lb a cubic foot is %d kg a cubic metre", (pounds, kilograms) => {
    expect(Math.abs(densityFromPoundsPerCubicFoot(pounds) - kilograms)).toBeLessThan(1);
    expect(densityInPoundsPerCubicFoot(densityFromPoundsPerCubicFoot(pounds))).toBeCloseTo(
      pounds,
      12,
    );
  });

  test("one pound a cubic foot is 16.02 kg a cubic metre, as Worldwide Foam prints it", () => {
    expect(densityFromPoundsPerCubicFoot(1)).toBeCloseTo(16.02, 2);
  });

  // The page cuts 0.567 lb and 0.441 lb to two places, so the tolerance is one in the second.
  test.each(worked)("gives the published weight of $name", ({ volume, pounds }) => {
    const mass = foamMass(cubicInches(volume), densityFromPoundsPerCubicFoot(1.7));
    expect(Math.abs(mass / pound - pounds)).toBeLessThan(0.01);
  });

  test("a one foot cube weighs its density, which is how the trade defines it", () => {
    // Foam Industries, as above: density is the weight of one 12 × 12 × 12 in block.
    const mass = foamMass(cubicInches(12 ** 3), densityFromPoundsPerCubicFoot(1.8));
    expect(mass / pound).toBeCloseTo(1.8, 9);
  });

  test("a 24 × 24 × 4 in seat at 1.8 lb weighs 2.40 lb, 1.09 kg (worked by hand)", () => {
    const mass = foamMass(cubicInches(24 * 24 * 4), densityFromPoundsPerCubicFoot(1.8));
    expect(mass).toBeCloseTo(1.09, 2);
    expect(mass / pound).toBeCloseTo(2.4, 9);
  });
});
