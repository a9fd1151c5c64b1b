import { describe, expect, test } from "vitest";
import { tryFold } from "../../lib/panels/bench-fold.ts";
import { allCorners } from "../../lib/project/rounded-corners.ts";
import type { BlockSpec } from "../../lib/project/types.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { box, cylinder, frustum, prism, rounded } from "../fixtures/blocks.ts";

// Each once broke; the seed is that of the random form it was cut down from.
const once: readonly { readonly fault: string; readonly blocks: readonly BlockSpec[] }[] = [
  {
    fault: "the side of a box through the axis of a cone missed its tip (seed 1340)",
    blocks: [
      frustum("b3", 200, 0, 180, [250, 160, 120]),
      box("b4", [130, 70, 300], [220, 220, 200]),
    ],
  },
  {
    fault: "the front of a box through the axis of a cone missed its tip (seed 5807)",
    blocks: [
      box("b1", [60, 340, 110], [290, 250, 210]),
      box("b2", [310, 170, 330], [130, 290, 120]),
      frustum("b4", 380, 0, 330, [190, 100, 50]),
    ],
  },
  {
    fault: "the back of a prism through the axis of a cone missed its tip (seed 7374)",
    blocks: [
      box("b2", [80, 320, 140], [160, 230, 250]),
      prism(
        "b4",
        [
          [0, 0],
          [250, 0],
          [250, 390],
          [170, 390],
          [170, 760],
          [0, 760],
        ],
        50,
        "y",
        [40, 230, 170],
      ),
      frustum("b5", 180, 0, 110, [50, 190, 270]),
    ],
  },
  {
    fault: "the end of a cylinder through the axis of a cone missed its tip (seed 8899)",
    blocks: [
      cylinder("b1", 320, 190, "x", [180, 40, 240]),
      frustum("b5", 220, 0, 180, [70, 30, 280]),
    ],
  },
  {
    // Half-way along, the rim of the cone reaches 2.5 mm over the rounded corner of radius 12.5; the
    // curve in which it leaves the corner lies at tan t = 0.2, 12.5 t = 2.467 mm round it. Laid flat
    // together over the two stretches where the corner begins, the two rims lie over one another.
    fault: "the top and a rounded corner closed a ring over itself by 1 mm² (seed 1225)",
    blocks: [
      frustum("b1", 80, 220, 350, [140, 0, 130]),
      rounded("b8", [330, 50, 200], 12.5, allCorners, [120, 180, 280], "x"),
    ],
  },
  {
    fault: "a disc that touched a cylinder from inside left a face without area (seed 5997)",
    blocks: [
      cylinder("b2", 200, 260, "y", [50, 170, 60]),
      cylinder("b4", 330, 70, "z", [90, 100, 80]),
    ],
  },
  {
    fault: "an upright cylinder that touched a lying one left a face without area (seed 9899)",
    blocks: [
      cylinder("b3", 300, 90, "x", [250, 280, 150]),
      cylinder("b8", 380, 320, "z", [100, 140, 100]),
    ],
  },
  {
    fault: "facets lay double where a cylinder stands out of another by 1.8 mm (seed 7978)",
    blocks: [
      cylinder("b1", 399, 383.4, "x", [70.4, 6.3, 239.8]),
      cylinder("b4", 226.9, 203.1, "x", [134, 31.6, 262.4]),
    ],
  },
  {
    fault: "the end of a cylinder grazing a nearly straight cone lost its apex (seed 1687)",
    blocks: [
      cylinder("b2", 386, 41.3, "x", [42.6, 246.7, 172.1]),
      frustum("b5", 149.6, 153.7, 233.2, [41.1, 299.5, 234.6]),
    ],
  },
];

describe("forms that once did not fold back", () => {
  test.each(once)("do now: $fault", ({ blocks }) => {
    const tried = tryFold(blocks);
    expect(tried).toMatchObject({ fault: null });
  });
});

// Weisstein, "Cone", MathWorld: slant s = √(r² + h²), side π r s. A plane through the axis cuts the
// side in two slants and leaves half of it.
test.each([
  { radius: 30, height: 40, slant: 50 },
  { radius: 50, height: 120, slant: 130 },
])("half a cone of radius $radius leans on a wall along two slants of $slant", (cone) => {
  const { radius, height, slant } = cone;
  const solid = buildSolid({
    id: "half",
    foam: null,
    blocks: [
      frustum("cone", 2 * radius, 0, height),
      box("wall", [100, 400, 300], [radius, -100, -50]),
    ],
  });
  const side = solid.faces.find(({ id }) => id === "cone/around")!;
  const edge = solid.edges.find(({ faces }) => faces.join() === "cone/around,wall/left")!;
  expect(edge.length).toBeCloseTo(2 * slant, 6);
  expect(side.area).toBeCloseTo((Math.PI * radius * slant) / 2, 6);
});
