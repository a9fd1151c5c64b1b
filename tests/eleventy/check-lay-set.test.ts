import { expect, test } from "vitest";
import { checkLaySet } from "../../lib/eleventy/check-lay-set.ts";
import type { Degrees, Point } from "../../lib/plane/types.ts";

const set = (points: readonly Point[], rotations: readonly Degrees[] = [0]) => ({
  name: "own",
  stripWidth: 10,
  items: [{ quantity: 1, rotations, points }],
});
const bar: readonly Point[] = [
  [0, 0],
  [5, 0],
  [5, 20],
  [0, 20],
];

// By hand: a bar of 5 × 20 stands 20 across a strip of 10, and 5 when it is turned by a quarter.
test.each([
  { name: "a piece wider than the strip", given: set(bar), fault: "only 10 wide" },
  { name: "a piece that fits when turned", given: set(bar, [0, 90]), fault: null },
  { name: "a clockwise piece", given: set([...bar].reverse(), [90]), fault: null },
  { name: "a piece with its first corner twice", given: set([...bar, [0, 0]], [90]), fault: null },
  {
    name: "a bow tie",
    given: set([
      [0, 0],
      [4, 3],
      [4, 0],
      [0, 3],
    ]),
    fault: "crosses itself",
  },
  { name: "a line", given: set(bar.slice(0, 2)), fault: "fewer than three corners" },
  { name: "a piece without rotations", given: set(bar, []), fault: "no rotations" },
])("says of $name what is wrong with it, if anything", ({ given, fault }) => {
  const found = checkLaySet(given);
  if (fault === null) expect(found).toBeNull();
  else expect(found).toContain(fault);
});
