import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nearestWord } from "../../lib/units/nearest-word.ts";

const keys = ["seamAllowance", "fabric", "fit", "panels", "open", "closing"];

describe("the nearest word", () => {
  test.each([
    ["seamAlowance", "seamAllowance"],
    ["seam-allowance", "seamAllowance"],
    ["SEAMALLOWANCE", "seamAllowance"],
    ["fabirc", "fabric"],
    ["pannels", "panels"],
    ["fti", null],
    ["fir", "fit"],
    ["zebra", null],
    ["", null],
  ])("to %s is %s", (written, nearest) => {
    expect(nearestWord(written, keys)).toBe(nearest);
  });

  test("is the word itself where it is known, and never a word that is not", () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ minLength: 1, maxLength: 8 })),
        fc.string(),
        (known, word) => {
          const nearest = nearestWord(word, known);
          return nearest === null || known.includes(nearest);
        },
      ),
      { numRuns: 200, seed: 7 },
    );
    for (const key of keys) expect(nearestWord(key, keys)).toBe(key);
  });
});
