import { expect, test } from "vitest";
import { partName } from "../../lib/booklet/build-cut-sheets.ts";
import { planSlabs } from "../../lib/packing/plan-slabs.ts";
import { part, slab } from "../packing/cut-cases.ts";

// Five copies of a wedge come from three blanks: the last was said to give copies 5 and 6.
test("the last blank of an odd number of wedges gives one copy and a spare", () => {
  const wedges = { ...part("wedge", [300, 200, 80], 3), twin: "wedge", leavesSpare: true };
  const [plan] = planSlabs([wedges], [slab([1000, 600, 80])]);
  const names = plan!.used.flatMap(({ places }) => places.map(partName));
  expect(names.toSorted()).toEqual([
    "wedge (copies 1 and 2), cut aslant",
    "wedge (copies 3 and 4), cut aslant",
    "wedge (copy 5 and a spare), cut aslant",
  ]);
});
