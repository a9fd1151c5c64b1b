import * as polyclip from "polyclip-ts";
import { describe, expect, test } from "vitest";
import { makeScene } from "../../lib/drawing/mesh-scene.ts";
import { spaceView } from "../../lib/drawing/space-view.ts";
import { visibleFaces } from "../../lib/drawing/visible-faces.ts";
import type { Polygon } from "../../lib/plane/types.ts";
import { armchair, bench, frame, lounger, pouf } from "../fixtures/drawing/solids.ts";

const area = (rings: readonly Polygon[]) =>
  Math.abs(
    rings.reduce(
      (sum, ring) =>
        sum +
        ring.reduce((twice, [x, y], i) => {
          const [nx, ny] = ring[(i + 1) % ring.length] ?? [x, y];
          return twice + (x * ny - nx * y) / 2;
        }, 0),
      0,
    ),
  );

describe("finding what is seen of each face", () => {
  // Oracle: the outline of the whole picture, joined by polyclip-ts, a library the project does not use.
  test.each([
    ["bench", bench],
    ["armchair", armchair],
    ["pouf", pouf],
    ["lounger", lounger],
    ["frame", frame],
  ])("shares the picture of the %s out among its faces without gap or overlap", (_, solid) => {
    for (const [azimuth, elevation] of [
      [32, 26],
      [212, -24],
    ] as const) {
      const scene = makeScene([{ mesh: solid.mesh }], spaceView(azimuth, elevation, 0.1));
      const fronts = scene.triangles.filter(({ isFront }) => isFront);
      const triangles = fronts.map(({ paper }) => [
        [...paper, paper[0]].map(([x, y]): [number, number] => [x, y]),
      ]);
      const [first = [], ...more] = triangles;
      const whole = polyclip.union([first], ...more.map((triangle) => [triangle]));
      const picture = whole.reduce(
        (sum, rings) => sum + area(rings.map((ring) => ring.slice(0, -1))),
        0,
      );
      const shared = visibleFaces(scene).reduce((sum, { region }) => sum + area(region), 0);
      // Slivers of a thousandth of a square millimetre are dropped along edges that touch.
      expect(Math.abs(shared - picture) / picture).toBeLessThan(2e-3);
    }
  });
});
