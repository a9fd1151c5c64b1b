import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findPaper, paperSizes, usualPaper } from "../../lib/units/paper-sizes.ts";
import { formatShopLength, roundUpForShop, shopStep } from "../../lib/units/shop-length.ts";
import type { Unit } from "../../lib/units/types.ts";

describe("paper", () => {
  // ISO 216:2007, main series A, in mm.
  test.each([
    ["A0", 841, 1189],
    ["A1", 594, 841],
    ["A2", 420, 594],
    ["A3", 297, 420],
    ["A4", 210, 297],
    ["A5", 148, 210],
    ["A6", 105, 148],
  ] as const)("%s is as ISO 216 gives it", (name, width, height) => {
    expect(findPaper(name)).toMatchObject({ width, height });
  });

  // http://www.manufacturinget.org/2011/07/ansiasme-y14-1-paper-sizes/ and
  // https://paper-size.com/c/us-paper-sizes.html: inches, and the whole mm printed beside them.
  test.each([
    ["Letter", 8.5, 11, 216, 279],
    ["Tabloid", 11, 17, 279, 432],
    ["ANSI C", 17, 22, 432, 559],
    ["ANSI D", 22, 34, 559, 864],
    ["ANSI E", 34, 44, 864, 1118],
    ["Legal", 8.5, 14, 216, 356],
  ] as const)("%s is as ANSI Y14.1 gives it", (name, inWide, inHigh, mmWide, mmHigh) => {
    const { width, height } = findPaper(name);
    expect(width).toBeCloseTo(inWide * 25.4, 9);
    expect(height).toBeCloseTo(inHigh * 25.4, 9);
    expect([Math.round(width), Math.round(height)]).toEqual([mmWide, mmHigh]);
  });

  // ISO 216: each size is the one before it halved, less than a millimetre lost to rounding.
  test("each A size is half the one before", () => {
    for (let step = 0; step < 6; step += 1) {
      const large = paperSizes[step];
      const small = paperSizes[step + 1];
      expect(small?.height).toBe(large?.width);
      expect(small?.width).toBe(Math.floor((large?.height ?? 0) / 2));
    }
  });

  test("every sheet stands upright and names its source", () => {
    for (const { width, height, source } of paperSizes) {
      expect(height).toBeGreaterThan(width);
      expect(source).not.toBe("");
    }
  });

  test("a country chooses its sheet", () => {
    expect([usualPaper("GB"), usualPaper("US"), usualPaper(null)]).toEqual(["A4", "Letter", "A4"]);
  });
});

describe("what shops sell", () => {
  // Common practice, no source: cloth by the tenth of a metre or the eighth of a yard, always up.
  test.each([
    [1510, "cm", 1600, "1.6 m"],
    [1500, "mm", 1500, "1.5 m"],
    [1500.0000001, "mm", 1500, "1.5 m"],
    [1, "cm", 100, "0.1 m"],
    [0, "cm", 0, "0 m"],
    [914.4, "in", 914.4, "1 yd"],
    [920, "in", 1028.7, "1 1/8 yd"],
    [914.4 * 2.26, "in", 914.4 * 2.375, "2 3/8 yd"],
  ] as const)("%d mm in a project in %s is sold as %d mm", (mm, units, sold, text) => {
    expect(roundUpForShop(mm, units)).toBeCloseTo(sold, 6);
    expect(formatShopLength(roundUpForShop(mm, units), units)).toBe(text);
  });

  test("never sells less than asked, nor a whole step more", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50_000, noNaN: true }),
        fc.constantFrom<Unit>("in", "cm", "mm"),
        (mm, units) => {
          const over = roundUpForShop(mm, units) - mm;
          return over > -0.001 && over < shopStep[units] + 0.001;
        },
      ),
      { numRuns: 300, seed: 4 },
    );
  });
});
