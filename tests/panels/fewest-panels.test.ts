import { describe, expect, test } from "vitest";
import type { BlockSpec } from "../../lib/project/types.ts";
import { box, cylinder, frustum, prism, rounded, wedge } from "../fixtures/blocks.ts";
import { makeCover } from "../fixtures/make-cover.ts";

interface Counted {
  readonly name: string;
  readonly blocks: readonly BlockSpec[];
  readonly panels: number;
  /** Why no cover has fewer, counted by hand on cloth wide enough for anything. */
  readonly why: string;
}

const all = ["front-left", "front-right", "back-left", "back-right"] as const;

const counted: readonly Counted[] = [
  { name: "box", blocks: [box("b", [400, 300, 200])], panels: 1, why: "a net of a box" },
  {
    name: "wedge",
    blocks: [wedge("w", [500, 400, 200], "back")],
    panels: 1,
    why: "a net of a wedge",
  },
  {
    name: "hexagon",
    blocks: [
      prism(
        "h",
        [
          [200, 0],
          [600, 0],
          [800, 346],
          [600, 692],
          [200, 692],
          [0, 346],
        ],
        100,
      ),
    ],
    panels: 1,
    why: "a net of a prism",
  },
  {
    name: "L seat",
    blocks: [box("seat", [450, 450, 200]), box("back", [450, 120, 300], [0, 450, 0])],
    panels: 1,
    why: "the sides hang on a band that runs once round",
  },
  {
    name: "U seat",
    blocks: [
      box("left", [150, 450, 100]),
      box("right", [150, 450, 100], [350, 0, 0]),
      box("back", [200, 150, 100], [150, 300, 0]),
    ],
    panels: 1,
    why: "the walls hang on one plate, those in the notch 100 deep in 200",
  },
  {
    name: "T cushion",
    blocks: [box("main", [600, 500, 120], [80, 100, 0]), box("front", [760, 100, 120])],
    panels: 1,
    why: "the walls hang on the plates",
  },
  {
    name: "cylinder",
    blocks: [cylinder("c", 400, 300)],
    panels: 3,
    why: "a circle meets its neighbour in a curve, and cloth folds along straight lines only",
  },
  {
    name: "frustum",
    blocks: [frustum("f", 500, 350, 300)],
    panels: 3,
    why: "both circles meet their neighbour in a curve",
  },
  {
    name: "cylinder on a box",
    blocks: [box("b", [500, 500, 200]), cylinder("c", 400, 150, "z", [50, 50, 200])],
    panels: 3,
    why: "a net of the box with a hole in it, the round side, and the circle",
  },
  {
    name: "plate with four round corners",
    blocks: [rounded("r", [600, 400, 60], 100, all)],
    panels: 2,
    // Where a plate hangs on a straight wall that runs on round its corner, the gap between the two ends
    // in a point with no room for allowances: a wall with a plate on it has no round corner beside it.
    why: "both plates on one straight wall, and the rest of the wall",
  },
];

describe("the fewest panels", () => {
  test.each(counted)("of a $name are $panels: $why", ({ blocks, panels }) => {
    const { cover } = makeCover(blocks, { panels: "fewest" }, { width: 5000 });
    expect(cover.panels.length).toBe(panels);
    expect(cover.refolds.ok).toBe(true);
    expect(cover.sewable.faults).toEqual([]);
    // No way that is offered has fewer.
    expect(Math.min(...cover.ways.map((way) => way.panels.length))).toBe(panels);
  });
});
