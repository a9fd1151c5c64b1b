import { describe, expect, test } from "vitest";
import { blockOutline } from "../../lib/drawing/block-outline.ts";
import { extrudeOutline } from "../../lib/drawing/extrude-outline.ts";
import { loopArea } from "../../lib/plane/loop-area.ts";
import type { BlockSpec } from "../../lib/project/types.ts";
import { buildSolid } from "../../lib/solids/index.ts";
import type { Point3 } from "../../lib/solids/types.ts";
import { dot } from "../../lib/drawing/space-view.ts";

const base = { id: "block", foam: null, at: [0, 0, 0] as const };
const blocks: readonly BlockSpec[] = [
  {
    ...base,
    kind: "prism",
    outline: [
      [0, 0],
      [120, 0],
      [100, 40],
      [20, 40],
    ],
    height: 30,
    along: "z",
  },
  { ...base, kind: "wedge", size: [90, 35, 30], rises: "back" },
  { ...base, kind: "wedge", size: [90, 35, 30], rises: "left" },
  { ...base, kind: "cylinder", diameter: 45, length: 30, along: "y" },
  {
    ...base,
    kind: "rounded",
    along: "z",
    size: [90, 60, 15],
    radius: 12,
    corners: ["front-left", "back-right"],
  },
];

describe("the outline a block is cut to", () => {
  // Source: volume of a right prism = area of its base × height (Euclid, Elements XII).
  test.each(blocks)("times its depth is the volume of the solid: $kind", (spec) => {
    const outline = blockOutline(spec);
    const solid = buildSolid({ id: "s", foam: null, blocks: [spec] });
    expect(Math.abs(loopArea(outline?.loop ?? [])) * (outline?.depth ?? 0)).toBeCloseTo(
      solid.volume,
      3,
    );
  });

  test("a box has none: its sizes say it all", () => {
    expect(blockOutline({ ...base, kind: "box", size: [1, 2, 3] })).toBeNull();
  });
});

describe("giving an outline a thickness", () => {
  const outer: [number, number][] = [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ];
  const hole: [number, number][] = [
    [10, 10],
    [20, 10],
    [20, 20],
    [10, 20],
  ];
  const standings = (["x", "y", "z"] as const).flatMap((across) =>
    (["x", "y", "z"] as const).flatMap((up) =>
      (["x", "y", "z"] as const)
        .filter((thin) => new Set([across, up, thin]).size === 3)
        .map((thin) => ({ across, up, thin })),
    ),
  );

  // Source: divergence theorem, volume = Σ a · (b × c) ÷ 6 over outward triangles.
  test.each(standings)("encloses area × thickness however it stands: $across $up $thin", (axes) => {
    const mesh = extrudeOutline([outer, hole], { ...axes, thickness: 12, at: [5, 6, 7] });
    const volume = mesh.triangles.reduce((sum, corners) => {
      const [a, b, c] = corners.map((index) => mesh.points[index]) as [Point3, Point3, Point3];
      const normal: Point3 = [
        b[1] * c[2] - b[2] * c[1],
        b[2] * c[0] - b[0] * c[2],
        b[0] * c[1] - b[1] * c[0],
      ];
      return sum + dot(a, normal) / 6;
    }, 0);
    expect(volume).toBeCloseTo((40 * 30 - 10 * 10) * 12, 6);
  });
});
