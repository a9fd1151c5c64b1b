import fc from "fast-check";
import { expect, test } from "vitest";
import { coverCost } from "../../lib/packing/cover-cost.ts";

// Worked by hand: 25 are needed; sheets of 10 at 7 and of 6 at 5. Two of 10 and one of 6 make 26 for 19;
// three of 10 cost 21, one of 10 and three of 6 cost 22. By rate alone 17.50 would be the bound.
test("whole pieces cost more than the cheapest rate", () => {
  const sizes = [
    { cost: 7, content: 10 },
    { cost: 5, content: 6 },
  ];
  expect(coverCost(sizes, 25, 0)).toBe(19);
  expect(coverCost(sizes, 25, 4)).toBe(22); // four pieces at least: one of 10 and three of 6
  expect(coverCost(sizes, 0, 2)).toBe(10);
  expect(coverCost(sizes, 0, 0)).toBe(0);
  expect(coverCost([], 25, 1)).toBe(0);
});

test("no counts of three sizes that suffice cost less, tried one by one", () => {
  const size = fc.record({
    cost: fc.integer({ min: 1, max: 30 }),
    content: fc.integer({ min: 2, max: 20 }),
  });
  fc.assert(
    fc.property(
      fc.tuple(size, size, size),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 0, max: 5 }),
      (sizes, needed, fewest) => {
        let least = Infinity;
        for (let n = 0; n < 21 ** 3; n++) {
          const counts = [n % 21, Math.floor(n / 21) % 21, Math.floor(n / 441)];
          const sum = (of: (i: number) => number) =>
            counts.reduce((all, c, i) => all + c * of(i), 0);
          if (sum((i) => sizes[i]!.content) < needed || sum(() => 1) < fewest) continue;
          least = Math.min(
            least,
            sum((i) => sizes[i]!.cost),
          );
        }
        expect(coverCost(sizes, needed, fewest)).toBe(least);
      },
    ),
    { numRuns: 40 },
  );
});
