import { describe, expect, test } from "vitest";
import { bestSheetValue } from "../../lib/packing/best-sheet-value.ts";

/** Items of equal worth and area, given by their sizes. */
const byArea = (sizes: readonly (readonly [number, number])[]) =>
  sizes.map((size) => ({ size, value: size[0] * size[1] }));

// Open sets from the ESICUP collection (CC0). gcut1: Beasley 1985, "Algorithms for unconstrained
// two-dimensional guillotine cutting", optimum published. cgcut1: Christofides and Whitlock 1977,
// "An algorithm for two-dimensional cutting problems", optimum from memory.
const gcut1 = {
  name: "gcut1",
  sheet: [250, 250] as const,
  items: byArea([
    [167, 184],
    [114, 118],
    [167, 152],
    [83, 140],
    [70, 86],
    [143, 166],
    [120, 160],
    [66, 148],
    [87, 141],
    [69, 165],
  ]),
};
const cgcut1 = {
  name: "cgcut1",
  sheet: [15, 10] as const,
  items: [
    { size: [8, 4] as const, demand: 2, value: 66 },
    { size: [3, 7] as const, demand: 1, value: 35 },
    { size: [8, 2] as const, demand: 3, value: 24 },
    { size: [3, 4] as const, demand: 5, value: 17 },
    { size: [3, 3] as const, demand: 2, value: 11 },
    { size: [3, 2] as const, demand: 2, value: 8 },
    { size: [2, 1] as const, demand: 1, value: 2 },
  ],
};

describe("the most value of one sheet cut right across", () => {
  test("gcut1: any number of each is worth 56460", () => {
    expect(bestSheetValue(gcut1)).toEqual({ value: 56460, bound: 56460 });
  });

  test("cgcut1: no more than so many of each is worth 244, and the bound agrees", () => {
    expect(bestSheetValue(cgcut1)).toEqual({ value: 244, bound: 244 });
  });

  test("is nothing when every item is larger than the sheet", () => {
    const large = { name: "large", sheet: [10, 10] as const, items: byArea([[11, 5]]) };
    expect(bestSheetValue(large).value).toBe(0);
  });
});
