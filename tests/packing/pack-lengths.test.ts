import { describe, expect, test } from "vitest";
import { packLengths } from "../../lib/packing/pack-lengths.ts";

// Known answers. The 100 and 5600 sets are printed in textbooks (V. Chvátal, Linear Programming,
// 1983, ch. 13, from memory; the 5600 mm paper-roll example is widely printed). t60_00 is Falkenauer's
// triplet set, OR-Library file binpack5.txt (by construction 20 bins exactly full), here from the
// ESICUP collection, CC0.
const sets = [
  {
    name: "four lengths on rolls of 100",
    capacity: 100,
    sizes: [45, 36, 31, 14],
    demand: [97, 610, 395, 211],
    fewest: 453,
  },
  {
    name: "thirteen widths on paper of 5600",
    capacity: 5600,
    sizes: [2200, 2150, 2140, 2100, 2050, 2000, 1930, 1880, 1820, 1710, 1560, 1520, 1380],
    demand: [20, 18, 16, 14, 12, 10, 20, 18, 18, 14, 12, 25, 22],
    fewest: 73,
  },
  {
    name: "sixty lengths in threes that fill boards of 1000",
    capacity: 1000,
    sizes: [
      495, 474, 473, 472, 466, 450, 445, 444, 439, 430, 419, 414, 410, 395, 372, 370, 366, 363, 361,
      357, 355, 351, 350, 347, 320, 315, 307, 303, 299, 298, 292, 288, 287, 283, 275, 274, 273, 272,
      271, 269, 268, 263, 262, 261, 259, 258, 255, 254, 252, 251,
    ],
    demand: [
      1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 3, 1, 1, 1, 1, 1, 2, 1, 1, 1, 1, 1, 1, 2, 1,
      1, 1, 1, 2, 1, 2, 2, 1, 2, 1, 1, 1, 1, 1, 1, 1, 1, 3, 1,
    ],
    fewest: 20,
  },
];

describe("cutting lengths from equal boards", () => {
  test.each(sets)("cuts $name from $fewest, and proves it", (set) => {
    const { patterns, lowerBound } = packLengths(set.capacity, set.sizes, set.demand);
    expect(patterns).toHaveLength(set.fewest);
    expect(lowerBound).toBe(set.fewest);
    for (const pattern of patterns) {
      const used = pattern.reduce((sum, count, i) => sum + count * set.sizes[i]!, 0);
      expect(used).toBeLessThanOrEqual(set.capacity);
    }
    expect(set.sizes.map((_, i) => patterns.reduce((sum, p) => sum + p[i]!, 0))).toEqual(
      set.demand,
    );
  });

  test("needs nothing for no lengths", () => {
    expect(packLengths(100, [], [])).toEqual({ patterns: [], lowerBound: 0 });
  });
});
