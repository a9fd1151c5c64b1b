import { describe, expect, test } from "vitest";
import { sidesOf } from "../../lib/project/sides-of.ts";
import type { BlockSpec } from "../../lib/project/types.ts";
import { faultsOf, projectOf, projectText } from "./project-text.ts";

const base = { id: "b", at: [0, 0, 0], foam: null } as const;
const size = [10, 10, 5] as const;
const triangle = [
  [0, 0],
  [4, 0],
  [0, 3],
] as const;

// The contract of the project file: names of faces.
const rows: readonly (readonly [string, BlockSpec, string])[] = [
  ["a box", { ...base, kind: "box", size }, "top underside front back left right"],
  [
    "an upright prism",
    { ...base, kind: "prism", outline: triangle, height: 5, along: "z" },
    "top underside side-1 side-2 side-3",
  ],
  [
    "a prism along x",
    { ...base, kind: "prism", outline: triangle, height: 5, along: "x" },
    "left right side-1 side-2 side-3",
  ],
  [
    "a prism along y",
    { ...base, kind: "prism", outline: triangle, height: 5, along: "y" },
    "front back side-1 side-2 side-3",
  ],
  [
    "a wedge that rises to the back",
    { ...base, kind: "wedge", size, rises: "back" },
    "slope underside back left right",
  ],
  [
    "a wedge that rises to the left",
    { ...base, kind: "wedge", size, rises: "left" },
    "slope underside left front back",
  ],
  [
    "an upright cylinder",
    { ...base, kind: "cylinder", diameter: 5, length: 9, along: "z" },
    "around top underside",
  ],
  [
    "a roll from left to right",
    { ...base, kind: "cylinder", diameter: 5, length: 9, along: "x" },
    "around left right",
  ],
  [
    "a roll from front to back",
    { ...base, kind: "cylinder", diameter: 5, length: 9, along: "y" },
    "around front back",
  ],
  [
    "a box with two rounded corners",
    {
      ...base,
      kind: "rounded",
      along: "z",
      size,
      radius: 2,
      corners: ["front-left", "front-right"],
    },
    "top underside front back left right around",
  ],
  [
    "a box rounded to a half circle",
    {
      ...base,
      kind: "rounded",
      along: "z",
      size,
      radius: 5,
      corners: ["front-left", "front-right"],
    },
    "top underside back left right around",
  ],
  [
    "a box with no corner rounded",
    { ...base, kind: "rounded", along: "z", size, radius: 2, corners: [] },
    "top underside front back left right",
  ],
  ["a frustum", { ...base, kind: "frustum", base: 9, top: 5, height: 4 }, "around underside top"],
  ["a cone", { ...base, kind: "frustum", base: 9, top: 0, height: 4 }, "around underside"],
];

describe("the sides of a block", () => {
  test.each(rows)("%s has its own", (_, block, sides) => {
    expect(sidesOf(block).join(" ")).toBe(sides);
  });
});

describe("naming a face", () => {
  const opened = (prism: string, face: string) => {
    const solids = `{pad: {blocks: {slab: {${prism}}}, cover: {fabric: print, open: [${face}]}}}`;
    return projectText({ solids });
  };

  test.each([
    ["prism: [[0,0],[9,0],[8,5],[1,5]], height: 2", "slab/front", "slab/side-1"],
    ["prism: [[0,0],[9,0],[8,5],[1,5]], height: 2", "slab/back", "slab/side-3"],
    ["prism: [[1,5],[8,5],[9,0],[0,0]], height: 2", "slab/back", "slab/side-1"],
    ["prism: [[0,0],[9,0],[9,5],[0,5]], height: 2, along: x", "slab/front", "slab/side-4"],
    ["prism: [[0,0],[9,0],[9,5],[0,5]], height: 2, along: x", "slab/underside", "slab/side-1"],
    ["prism: [[0,0],[9,0],[9,5],[0,5]], height: 2, along: y", "slab/top", "slab/side-3"],
    ["box: [9, 5, 2]", "pad/back", "slab/back"],
  ])("%s: %s is %s", (form, face, name) => {
    const open = projectOf(opened(form, face)).solids[0]?.cover?.open;
    expect(open).toEqual([{ kind: "face", face: name }]);
  });

  test("a side that faces no way squarely is named by its number only", () => {
    expect(faultsOf(opened("prism: [[0,0],[9,0],[8,5],[1,5]], height: 2", "slab/left"))).toEqual([
      "content/pad.md:6 solids.pad.cover.open.0: names slab/left, but a prism has no side left. Its sides are top, underside, side-1, side-2, side-3 and side-4.",
    ]);
  });

  test("two sides that face the same way are named by their numbers only", () => {
    const l = "prism: [[0,0],[9,0],[9,3],[4,3],[4,6],[0,6]], height: 2";
    expect(faultsOf(opened(l, "slab/back"))).toHaveLength(1);
    expect(faultsOf(opened(l, "slab/front"))).toEqual([]);
  });
});
