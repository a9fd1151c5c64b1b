import { describe, expect, test } from "vitest";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { distance3, dot3, subtract3 } from "../../lib/solids/points3.ts";
import { randomBlocks } from "../../lib/solids/random-blocks.ts";
import type { Point3, Solid, SolidEdge } from "../../lib/solids/types.ts";
import { cylinder, frustum } from "../fixtures/blocks.ts";

// Random forms of which some facet corner once stood past the next corner of its edge. An edge of
// 278 ran out 49 mm along a line in which a flat side just touches a round one, and straight back; in
// 2533 such an edge shrank to nothing; one of 20 runs over the tip of a cone, and may turn. A corner
// of 9353 was carried 7.6 mm to the other branch of its curve.
const overshot = [20, 103, 111, 181, 222, 254, 278, 2533, 7978, 9353];

const tipsAlong = ({ faces }: SolidEdge, solid: Solid): readonly Point3[] =>
  solid.faces.flatMap(({ id, surface }) =>
    faces.includes(id) && surface.kind === "cone" ? [surface.tip] : [],
  );

describe("edges of random forms", () => {
  test.each(overshot)("never run back on themselves: %i", (seed) => {
    const solid = buildSolid({ id: "form", foam: null, blocks: randomBlocks(seed) });
    expect(Math.min(...solid.edges.map(({ length }) => length))).toBeGreaterThan(1e-6);
    for (const edge of solid.edges) {
      const tips = tipsAlong(edge, solid);
      edge.path.slice(1, -1).forEach((at, i) => {
        if (tips.some((tip) => distance3(tip, at) < 1e-6)) return;
        const [before, after] = [edge.path[i]!, edge.path[i + 2]!];
        expect(dot3(subtract3(at, before), subtract3(after, at))).toBeGreaterThanOrEqual(0);
      });
    }
  });
});

// The plane of b6's underside touches b7 from above in one line; they share no more than its end.
test("a flat side that only touches a round one has no seam with it", () => {
  const solid = buildSolid({ id: "form", foam: null, blocks: randomBlocks(278) });
  const along = solid.edges.filter(({ faces }) => faces.join() === "b6/underside,b7/around");
  expect(along).toEqual([]);
});

// Two cylinders of radius 115 about (255, y, 165) and 150 about (220, 340, z) touch from inside in
// the one point (370, 340, 165), where the two branches of their curve cross.
test("an edge turns exactly where two round sides touch in a point", () => {
  const solid = buildSolid({ id: "form", foam: null, blocks: randomBlocks(2050) });
  const paths = solid.edges.flatMap(({ faces, path }) =>
    faces.join() === "b5/around,b6/around" ? [path] : [],
  );
  expect(paths.flat()).toContainEqual([370, 340, 165]);
});

// Weisstein, "Hyperbola", MathWorld: a plane along the axis cuts a cone in a hyperbola. Its apex lies
// where the cone, of radius 74.8 below and 76.85 above, is as wide as the plane is far from its axis:
// 117.95 - 42.6 = 75.35. The chords of the facets on either side of it meet in an acute angle.
test("a plane that grazes a nearly straight cone cuts it up to the apex of the hyperbola", () => {
  const blocks = [
    cylinder("disc", 386, 41.3, "x", [42.6, 246.7, 172.1]),
    frustum("cone", 149.6, 153.7, 233.2, [41.1, 299.5, 234.6]),
  ];
  const solid = buildSolid({ id: "form", foam: null, blocks });
  const edge = solid.edges.find(({ faces }) => faces.join() === "disc/left,cone/around#2")!;
  const lowest = Math.min(...edge.path.map(([, , z]) => z));
  expect(lowest).toBeCloseTo(234.6 + (233.2 * (75.35 - 74.8)) / (76.85 - 74.8), 6);
});
