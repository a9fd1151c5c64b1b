import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hideLines } from "../../lib/drawing/hide-lines.ts";
import { meshLines } from "../../lib/drawing/mesh-lines.ts";
import { makeScene } from "../../lib/drawing/mesh-scene.ts";
import { dot, nearness, project, spaceView } from "../../lib/drawing/space-view.ts";
import type { Point } from "../../lib/plane/types.ts";
import type { Point3, Solid } from "../../lib/solids/types.ts";
import { armchair, bench, lounger, pad } from "../fixtures/drawing/solids.ts";

const views = fc.tuple(fc.integer({ min: 1, max: 359 }), fc.integer({ min: -80, max: 80 }));
const isAskew = ([azimuth, elevation]: [number, number]) =>
  azimuth % 90 !== 0 && Math.abs(elevation) > 4 && Math.abs((azimuth % 90) - 45) < 40;

const length = (from: Point, to: Point) => Math.hypot(from[0] - to[0], from[1] - to[1]);

describe("hiding lines", () => {
  // Source: Roberts, "Machine Perception of Three-Dimensional Solids", MIT 1963: an edge of a convex
  // body is hidden exactly when both its faces turn away from the viewer.
  test("agrees with Roberts on a convex body from every side", () => {
    fc.assert(
      fc.property(views.filter(isAskew), ([azimuth, elevation]) => {
        const view = spaceView(azimuth, elevation, 0.1);
        const scene = makeScene([{ mesh: pad.mesh }], view);
        for (const edge of pad.edges) {
          const [from, to] = [edge.path[0], edge.path[edge.path.length - 1]];
          if (!from || !to) continue;
          const seen = hideLines([{ from, to }], scene);
          const normals = edge.faces.map(
            (id) => pad.faces.find((face) => face.id === id)?.normal ?? [0, 0, 0],
          );
          const nearest = Math.min(
            ...normals.map((normal) => Math.abs(dot(normal as Point3, view.towards))),
          );
          if (nearest < 0.03) continue; // a face seen edge-on shows or hides by a hair
          const faces = normals.some((normal) => dot(normal as Point3, view.towards) > 0);
          expect(seen.map(({ isVisible }) => isVisible)).toEqual([faces]);
        }
      }),
      { numRuns: 40, seed: 11 },
    );
  });

  // Source: Möller and Trumbore, "Fast, Minimum Storage Ray/Triangle Intersection", 1997, as an
  // independent test of whether anything stands between a point and the viewer.
  test.each([
    ["bench", bench],
    ["armchair", armchair],
    ["lounger", lounger],
  ])("agrees with rays cast from points along the lines of the %s", (_, solid: Solid) => {
    for (const [azimuth, elevation] of [
      [32, 26],
      [212, -24],
      [-40, 35],
    ] as const) {
      const view = spaceView(azimuth, elevation);
      const scene = makeScene([{ mesh: solid.mesh }], view);
      let [checked, wrong] = [0, 0];
      for (const line of meshLines(scene).features) {
        const [a, b] = [project(view, line.from), project(view, line.to)];
        const whole = length(a, b);
        if (whole < 8) continue;
        for (const { from, to, isVisible } of hideLines([line], scene)) {
          if (length(from, to) < 4) continue;
          const share = length(a, [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]) / whole;
          const point = line.from.map(
            (value, axis) => value + ((line.to[axis] ?? 0) - value) * share,
          );
          checked += 1;
          if (isVisible === isBlocked(point as unknown as Point3, solid, view.towards)) wrong += 1;
        }
      }
      expect(checked).toBeGreaterThan(15);
      expect(wrong).toBe(0);
    }
  });

  test("neither adds to a line nor loses any of it", () => {
    const scene = makeScene([{ mesh: armchair.mesh }], spaceView(32, 26, 0.1));
    for (const line of meshLines(scene).features) {
      const whole = length(project(scene.view, line.from), project(scene.view, line.to));
      const parts = hideLines([line], scene).reduce(
        (sum, { from, to }) => sum + length(from, to),
        0,
      );
      expect(parts).toBeCloseTo(whole, 6);
    }
  });
});

/** Does a ray from a point to the viewer meet a triangle more than a millimetre away? */
function isBlocked(origin: Point3, { mesh }: Solid, ray: Point3): boolean {
  return mesh.triangles.some((corners) => {
    const [a, b, c] = corners.map((index) => mesh.points[index] ?? [0, 0, 0]) as [
      Point3,
      Point3,
      Point3,
    ];
    const [e1, e2] = [minus(b, a), minus(c, a)];
    const p = cross(ray, e2);
    const det = dot(e1, p);
    if (Math.abs(det) < 1e-9) return false;
    const t = minus(origin, a);
    const u = dot(t, p) / det;
    const q = cross(t, e1);
    const v = dot(ray, q) / det;
    if (u < 1e-6 || v < 1e-6 || u + v > 1 - 1e-6) return false;
    return dot(e2, q) / det > 1;
  });
}

const minus = (a: Point3, b: Point3): Point3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Point3, b: Point3): Point3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

describe("looking at a solid", () => {
  // Source: ISO 5456-3, isometric axonometry: all three axes shortened by √(2/3), 120° apart.
  test("is isometric at 45 and 35.264 degrees", () => {
    const view = spaceView(45, (Math.atan(1 / Math.SQRT2) * 180) / Math.PI);
    const axes = (
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ] as const
    ).map((axis) => project(view, axis));
    for (const [x, y] of axes) expect(Math.hypot(x, y)).toBeCloseTo(Math.sqrt(2 / 3), 12);
    // As lines the axes meet at 60 and 120 degrees: y runs away from the viewer, so its cosine is +0.5.
    for (const [a = [0, 0], b = [0, 0]] of [axes.slice(0, 2), axes.slice(1)])
      expect(Math.abs(a[0] * b[0] + a[1] * b[1]) / (2 / 3)).toBeCloseTo(0.5, 12);
  });

  test("keeps a length that lies across the view", () => {
    const view = spaceView(30, 20);
    expect(nearness(view, view.across)).toBeCloseTo(0, 12);
    expect(Math.hypot(...project(view, view.across))).toBeCloseTo(1, 12);
  });
});
