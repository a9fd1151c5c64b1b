import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseLength } from "../../lib/units/parse-length.ts";

const names = new Map([
  ["length", 1200],
  ["depth", 420],
  ["thick", 80],
]);
const read = (text: string) => {
  const reading = parseLength(text, { units: "cm", names });
  return reading.ok ? reading.value : reading.fault;
};

describe("working out a formula", () => {
  // Worked by hand with length 120 cm, depth 42 cm, thick 8 cm.
  test.each([
    ["length", 1200],
    ["2 * depth + 3", 870],
    ["length - depth / 2", 990],
    ["(length - depth) / 2", 390],
    ["length - (depth + thick)", 700],
    ["length / 3 / 4", 100],
    ["1/2 * length", 600],
    ["length * 2/3", 800],
    ["min(depth, 50)", 420],
    ["max(depth, 50)", 500],
    ["max(depth; 17 in, thick)", 431.8],
    ["min(1 m, 2 ft) + 1 in", 635],
    ["-thick + depth", 340],
    ["length × 2 ÷ 3 − thick", 720],
    ["length / depth * 21 cm", 600],
    ["24 1/2 in * 2", 1244.6],
    ["1½ in + 1/2 in", 50.8],
    ["2 * (1 + 2) * depth", 2520],
    ["3 + 4", 70],
  ])("%s is %d mm", (text, mm) => {
    expect(read(text)).toBe(mm);
  });

  test.each([
    ["length * depth", "two lengths multiplied make an area"],
    ["length / depth", "the formula gives a plain ratio, not a length"],
    ["length / depth + thick", "a length and a plain ratio are put together"],
    ["5 / 8 in", "a plain number divided by a length is not a length"],
    ["length/2/3", "dividing by a fraction without brackets can be read two ways"],
    ["2 / length", "a plain number divided by a length is not a length"],
    ["length / 0", "the formula divides by zero"],
    ["length / (depth - depth)", "the formula divides by zero"],
    ["length / 2/3", "dividing by a fraction without brackets can be read two ways"],
    ["min(2,5)", "a comma between two digits inside min or max can be read two ways"],
    ["length +", "the formula stops half way"],
    ["(length", "a bracket is not closed"],
    ["length)", ") is out of place"],
    ["min length", "min needs brackets"],
    ["sqrt(length)", "sqrt is not something to work out with"],
    ["length depth", "depth is not a unit"],
    ["dpeth * 2", "dpeth is not a name listed in dimensions"],
    ["toString", "toString is not a name listed in dimensions"],
    ["constructor", "constructor is not a name listed in dimensions"],
    ["__proto__", "__proto__ is not a name listed in dimensions"],
    ["depth.constructor", '"." has no meaning in a length'],
    ["depth[0]", '"[" has no meaning in a length'],
    ["`${depth}`", '"`" has no meaning in a length'],
  ])("%s is refused: %s", (text, fault) => {
    expect(read(text)).toBe(fault);
  });

  test("an unknown name gets the nearest known one", () => {
    expect(parseLength("dpeth", { units: "cm", names })).toMatchObject({
      fix: "Write depth if that was meant",
    });
    expect(parseLength("zebra", { units: "cm", names })).toMatchObject({
      fix: "Write a number, or one of length, depth, thick",
    });
  });

  test("a fault says at which character it is", () => {
    expect(parseLength("2 * dpeth", { units: "cm", names })).toMatchObject({ at: 4 });
    expect(parseLength("length + 1,000", { units: "cm", names })).toMatchObject({ at: 9 });
  });

  test("deep brackets and long formulas are refused, not followed", () => {
    expect(read("(".repeat(90) + "1" + ")".repeat(90))).toBe("brackets are nested too deep");
    expect(read("-".repeat(90) + "1")).toBe("brackets are nested too deep");
    expect(read("min(".repeat(35) + "1" + ")".repeat(35))).toBe("brackets are nested too deep");
    expect(read("1+".repeat(300) + "1")).toBe("a formula has more than 200 characters");
  });

  test("agrees with arithmetic done in the open", () => {
    const small = fc.integer({ min: 1, max: 99 });
    fc.assert(
      fc.property(small, small, small, (a, b, c) => {
        expect(read(`${a} * (${b} + ${c}) / ${b}`)).toBeCloseTo((a * (b + c) * 10) / b, 6);
        expect(read(`max(${a}, ${b}) + min(${b}, ${c})`)).toBe(
          (Math.max(a, b) + Math.min(b, c)) * 10,
        );
      }),
      { numRuns: 100, seed: 2 },
    );
  });
});
