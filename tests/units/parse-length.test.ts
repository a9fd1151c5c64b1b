import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseLength } from "../../lib/units/parse-length.ts";
import type { Unit } from "../../lib/units/types.ts";

const read = (text: string | number, units: Unit = "in") => {
  const reading = parseLength(text, { units });
  return reading.ok ? reading.value : reading.fault;
};

// International yard and pound agreement, 1959: 1 yd = 0.9144 m exactly, so 1 in = 25.4 mm exactly.
// NIST SP 811 (2008), appendix B.8, lists the same factors as exact: in, ft and yd to m.
const exact = [
  ["1 in", 25.4],
  ["1 ft", 304.8],
  ["1 yd", 914.4],
  ["3 yd", 2743.2],
  ["24 1/2 in", 622.3],
  ["5/8 in", 15.875],
  ["2 ft 3 in", 685.8],
  ["2' 3\"", 685.8],
  ["2′ 3″", 685.8],
  ["2’ 3”", 685.8],
  ["1 yd 1 ft 1 in", 1244.6],
  ["24½ in", 622.3],
  ["⅝ in", 15.875],
  ["1 ⅛ in", 28.575],
  ["5⁄8 in", 15.875],
  ["45 cm", 450],
  ["45cm", 450],
  ["62,5 cm", 625],
  ["0,125 m", 125],
  ["1 m 20 cm", 1200],
  [".5 in", 12.7],
  ["12 inches", 304.8],
  ["3 metres", 3000],
] as const;

describe("reading a length", () => {
  test.each(exact)("%s is %d mm, whatever the project's unit", (text, mm) => {
    for (const units of ["in", "cm", "mm"] as const) expect(read(text, units)).toBe(mm);
  });

  test.each([
    ["17.5", "in", 444.5],
    ["1 1/2", "in", 38.1],
    ["17.5", "cm", 175],
    ["17,5", "mm", 17.5],
    [24, "in", 609.6],
    [0.1, "cm", 1],
  ] as const)("a bare %s is in the project's unit, %s", (text, units, mm) => {
    expect(read(text, units)).toBe(mm);
  });

  // Ways to write a number that two readers would read differently, each with its reason.
  test.each([
    ["1,000", "1,000 can be read as 1000 or as 1.000"],
    ["62,500 mm", "62,500 can be read as 62500 or as 62.500"],
    ["1,234.5 mm", "a number has both a point and a comma"],
    ["1.234,5 mm", "a number has both a point and a comma"],
    ["1,000,000 mm", "a number has two points or commas"],
    ["1 000 mm", "two numbers stand side by side"],
    ["24-1/2 in", "24-1/2 can be read as a sum or as a mixed number"],
    ["3 5/4 in", "3 5/4 has a fraction that is not less than one"],
    ["5' 6", "two numbers stand side by side"],
  ])("%s is refused with the reason", (text, fault) => {
    expect(read(text)).toBe(fault);
  });

  test.each([
    ["1,000", "Write 1000 or 1.000"],
    ["1,234.5 mm", "Write 1234.5"],
    ["1.234,5 mm", "Write 1234.5"],
    ["1,000,000 mm", "Write 1000000"],
    ["24-1/2 in", "Write 24 1/2 for the mixed number, or 24 - (1/2)"],
  ])("%s is refused with a way to mend it", (text, fix) => {
    expect(parseLength(text, { units: "in" })).toMatchObject({ ok: false, fix });
  });

  test.each([
    ["", "the length is empty"],
    ["   ", "the length is empty"],
    ["forty", "forty is not a name listed in dimensions"],
    ["0", "the length is zero"],
    ["-3 in", "the length is negative"],
    ["3 - 3", "the length is zero"],
    ["1/0", "1/0 divides by zero"],
    ["2 parsecs", "parsecs is not a unit"],
    ["in", "the unit in has no number"],
    ["101 m", "the length is more than 100 m"],
    ["9999999999999999", "a number has more than 15 digits"],
    ["1e3", "e3 is not a unit"],
    ["$5", '"$" has no meaning in a length'],
    [Number.NaN, "the length is not a finite number"],
    [Number.POSITIVE_INFINITY, "the length is not a finite number"],
    [1e300, "the length is more than 100 m"],
  ] as const)("%s is refused: %s", (text, fault) => {
    expect(read(text)).toBe(fault);
  });

  test("a place may be zero or negative, a kerf zero", () => {
    expect(parseLength("-2 in", { units: "in", allow: "any" })).toEqual({ ok: true, value: -50.8 });
    expect(parseLength(0, { units: "in", allow: "any" })).toEqual({ ok: true, value: 0 });
    expect(parseLength("0", { units: "in", allow: "notNegative" })).toEqual({ ok: true, value: 0 });
    expect(parseLength("-1", { units: "in", allow: "notNegative" }).ok).toBe(false);
  });

  test("never throws, whatever is written", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: "grapheme" }), fc.double()), (text) => {
        const reading = parseLength(text, { units: "cm" });
        return reading.ok ? reading.value > 0 && reading.value <= 100_000 : reading.fault !== "";
      }),
      { numRuns: 500, seed: 1 },
    );
  });
});

describe("names with hyphens", () => {
  const names = new Map([
    ["seat", 100],
    ["depth", 30],
    ["seat-depth", 500],
  ]);
  test.each([
    ["seat-depth", 500],
    ["seat - depth", 70],
    ["depth-seat/2 + 200", 180],
    ["seat-depth - depth", 470],
  ])("reads %s as %i mm", (written, mm) => {
    expect(parseLength(written, { units: "mm", names })).toEqual({ ok: true, value: mm });
  });
});
