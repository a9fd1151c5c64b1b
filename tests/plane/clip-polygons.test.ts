import fc from "fast-check";
import pointInPolygon from "point-in-polygon-hao";
import * as polyclip from "polyclip-ts";
import { describe, expect, test } from "vitest";
import {
  intersect,
  overlapArea,
  regionArea,
  subtractRegion,
  unite,
} from "../../lib/plane/clip-polygons.ts";
import { containsPoint } from "../../lib/plane/contains-point.ts";
import { convexHull } from "../../lib/plane/convex-hull.ts";
import { distance } from "../../lib/plane/points.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import type { Point, Polygon } from "../../lib/plane/types.ts";

const coordinate = fc.integer({ min: 0, max: 100 });
/** Corners round a middle, one at each of several angles: never crossing, seldom convex. */
const star: fc.Arbitrary<Polygon> = fc
  .tuple(
    coordinate,
    coordinate,
    fc.array(fc.integer({ min: 5, max: 60 }), { minLength: 3, maxLength: 9 }),
  )
  .map(([x, y, reaches]) =>
    reaches.map((reach, i): Point => {
      const angle = (2 * Math.PI * i) / reaches.length + 0.1;
      return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
    }),
  );

/** Area of what polyclip-ts gives, outer rings less holes. */
const areaOf = (parts: readonly (readonly (readonly number[])[])[][]) =>
  parts.reduce(
    (sum, [outer, ...holes]) =>
      sum +
      Math.abs(polygonArea(outer as unknown as Polygon)) -
      holes.reduce((all, hole) => all + Math.abs(polygonArea(hole as unknown as Polygon)), 0),
    0,
  );
const asRing = (polygon: Polygon) =>
  [[...polygon]] as unknown as Parameters<typeof polyclip.union>[0];

describe("clipping, against polyclip-ts as a second opinion", () => {
  test("shares what it shares", () => {
    fc.assert(
      fc.property(star, star, (a, b) => {
        const wanted = areaOf(polyclip.intersection(asRing(a), asRing(b)) as never);
        expect(Math.abs(overlapArea([a], [b]) - wanted)).toBeLessThan(1e-3);
      }),
      { numRuns: 150 },
    );
  });

  test("takes off what it takes off", () => {
    fc.assert(
      fc.property(star, star, (a, b) => {
        const wanted = areaOf(polyclip.difference(asRing(a), asRing(b)) as never);
        expect(Math.abs(regionArea(subtractRegion([a], [b])) - wanted)).toBeLessThan(1e-3);
      }),
      { numRuns: 150 },
    );
  });

  test("joins to both less what they share", () => {
    fc.assert(
      fc.property(star, star, (a, b) => {
        const wanted = polygonArea(a) + polygonArea(b) - overlapArea([a], [b]);
        expect(Math.abs(regionArea(unite([a], [b])) - wanted)).toBeLessThan(1e-3);
      }),
      { numRuns: 150 },
    );
  });
});

const square = (x: number, y: number, side: number): Polygon => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
];

describe("regions", () => {
  test("that only touch share nothing", () => {
    expect(overlapArea([square(0, 0, 10)], [square(10, 0, 10)])).toBe(0);
    expect(overlapArea([square(0, 0, 10)], [square(10, 10, 10)])).toBe(0);
  });

  test("keep their holes when joined with others", () => {
    const frame = [square(0, 0, 100), square(20, 20, 60).toReversed()];
    expect(regionArea(unite(frame, [square(200, 0, 10)]))).toBeCloseTo(10_000 - 3600 + 100, 6);
    expect(overlapArea(frame, [square(30, 30, 10)])).toBe(0);
    expect(regionArea(intersect(frame, [square(0, 0, 30)]))).toBeCloseTo(900 - 100, 6);
  });

  test("of no loops join to none", () => {
    expect(unite([])).toEqual([]);
  });
});

describe("whether a polygon holds a point", () => {
  test("agrees with a second opinion", () => {
    fc.assert(
      fc.property(star, fc.tuple(coordinate, coordinate), (polygon, at) => {
        const ring = [...polygon, polygon[0]!].map(([x, y]) => [x, y]);
        const wanted = pointInPolygon([at[0], at[1]], [ring] as never);
        // On the outline either answer will do.
        if (wanted !== 0) expect(containsPoint(polygon, at)).toBe(wanted);
      }),
    );
  });
});

describe("a convex hull", () => {
  test("holds all its points, turns left only, and is no longer than any round trip", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 30 }),
        (points) => {
          const hull = convexHull(points);
          fc.pre(hull.length > 2 && polygonArea(hull) > 1);
          const signs = hull.flatMap(([x1, y1], i) => {
            const [x2, y2] = hull[(i + 1) % hull.length]!;
            return points.map(([x, y]) => (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1));
          });
          expect(Math.min(...signs)).toBeGreaterThan(-1e-9);
          const trip = points.reduce(
            (sum, at, i) => sum + distance(at, points[(i + 1) % points.length]!),
            0,
          );
          const rim = hull.reduce(
            (sum, at, i) => sum + distance(at, hull[(i + 1) % hull.length]!),
            0,
          );
          expect(rim).toBeLessThan(trip + 1e-9);
        },
      ),
    );
  });
});
