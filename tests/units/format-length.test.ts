import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  formatFigure,
  formatLength,
  formatLengthInFull,
  formatSizes,
} from "../../lib/units/format-length.ts";
import { cuttingTolerance, lengthParts } from "../../lib/units/length-parts.ts";
import { parseLength } from "../../lib/units/parse-length.ts";
import type { LengthStyle, Unit } from "../../lib/units/types.ts";

const inches: LengthStyle = { units: "in", round: 1 / 8 };
const style = (units: Unit): LengthStyle => ({ units, round: 1 / 8 });

describe("printing a length", () => {
  test.each([
    [622.3, "24 1/2 in"],
    [609.6, "24 in"],
    [15.875, "5/8 in"],
    [38.1, "1 1/2 in"],
    [25.4 * 17.875, "17 7/8 in"],
    [0, "0 in"],
    [-50.8, "-2 in"],
    [-12.7, "-1/2 in"],
    // https://www.thespruce.com/sew-a-round-bolster-pillow-2977940: a 9 in bolster takes
    // 9 × 3.14 + 1 = 29.26 in, printed there as 29 1/4
    [29.26 * 25.4, "29 1/4 in"],
    [29.274 * 25.4, "29 1/4 in"],
  ])("%d mm prints as %s", (mm, text) => {
    expect(formatLength(mm, inches)).toBe(text);
  });

  test.each([
    [625, "cm", "62.5 cm"],
    [450, "cm", "45 cm"],
    [538.52, "cm", "53.9 cm"], // Pythagoras: a wedge 500 deep and 200 high
    [353.55, "mm", "354 mm"], // Pythagoras: 50 across in 350
    [620.5, "mm", "621 mm"],
    [0.4, "mm", "0.4 mm"],
    [0.2, "cm", "0.02 cm"],
    [-1.2, "mm", "-1 mm"],
  ] as const)("%d mm in %s prints as %s", (mm, units, text) => {
    expect(formatLength(mm, style(units))).toBe(text);
  });

  // Where 1/8 in would hide more than half a mark of the tape, the figure is made finer.
  test.each([
    [(5 / 16) * 25.4, "5/16 in", null],
    [(1 / 16) * 25.4, "1/16 in", null],
    [(3 / 64) * 25.4, "3/64 in", null],
    [450, "17 11/16 in", "17.717 in"],
    [1, "1/16 in", "0.039 in"],
  ])("%d mm keeps its exact value", (mm, text, exact) => {
    expect(formatLength(mm, inches)).toBe(text);
    expect(lengthParts(mm, inches).exact).toBe(exact);
  });

  test("the full value stands behind a figure that is not the true one", () => {
    expect(formatLengthInFull(450, inches)).toBe("17 11/16 in (17.717 in exactly)");
    expect(formatLengthInFull(622.3, inches)).toBe("24 1/2 in");
  });

  test("a length comes apart for setting in type", () => {
    expect(lengthParts(622.3, inches)).toEqual({
      isNegative: false,
      whole: "24",
      numerator: 1,
      denominator: 2,
      unit: "in",
      exact: null,
    });
    expect(lengthParts(15.875, inches)).toMatchObject({ whole: "", numerator: 5, denominator: 8 });
  });

  test("sizes share one unit, figures have none", () => {
    expect(formatSizes([609.6, 457.2, 15.875], inches)).toBe("24 × 18 × 5/8 in");
    expect(formatFigure(622.3, inches)).toBe("24 1/2");
  });

  test("the step can be set", () => {
    expect(formatLength(26.9875, { units: "in", round: 1 / 16 })).toBe("1 1/16 in");
    expect(formatLength(25.4 * 3.26, { units: "in", round: 1 / 2 })).toBe("3 1/4 in");
  });

  test("what is printed reads back to within the cutting tolerance", () => {
    const lengths = fc.double({ min: 0.02, max: 99_000, noNaN: true });
    const units = fc.constantFrom<Unit>("in", "cm", "mm");
    const rounds = fc.constantFrom(1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32);
    fc.assert(
      fc.property(lengths, units, rounds, (mm, unit, round) => {
        const reading = parseLength(formatLength(mm, { units: unit, round }), { units: unit });
        if (!reading.ok) throw new Error(reading.fault);
        expect(Math.abs(reading.value - mm)).toBeLessThanOrEqual(cuttingTolerance[unit] + 1e-6);
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  test("every eighth of an inch prints and reads back exactly", () => {
    for (let count = 1; count <= 8 * 120; count += 1) {
      const mm = (count * 25.4) / 8;
      const reading = parseLength(formatLength(mm, inches), { units: "in" });
      expect(reading.ok && reading.value).toBeCloseTo(mm, 8);
    }
  });
});
