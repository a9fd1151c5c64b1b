import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Point } from "../../lib/plane/types.ts";
import { flattenPoint, liftPoint } from "../../lib/solids/lift-point.ts";
import { cross3, distance3, dot3, unit3 } from "../../lib/solids/points3.ts";
import { polishPoint } from "../../lib/solids/polish-points.ts";
import { distanceFrom, dropOnto, isSameSurface, normalOf } from "../../lib/solids/surfaces.ts";
import type { Direction, Surface } from "../../lib/solids/types.ts";

const part = fc.double({ min: -300, max: 300, noNaN: true });
const place = fc.tuple(part, part, part);
const axis = fc.constantFrom<Direction>([1, 0, 0], [0, 1, 0], [0, 0, 1]);
const across = (along: Direction): Direction => (along[2] === 1 ? [1, 0, 0] : [0, 0, 1]);

const plane: fc.Arbitrary<Surface> = fc
  .tuple(
    place,
    place.filter((to) => Math.hypot(...to) > 1),
  )
  .map(([origin, towards]) => {
    const normal = unit3(towards);
    const helper: Direction = Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
    const first = unit3(cross3(helper, normal));
    return { kind: "plane", origin, across: first, rise: unit3(cross3(normal, first)) };
  });
const cylinder: fc.Arbitrary<Surface> = fc
  .tuple(place, axis, fc.integer({ min: 5, max: 400 }))
  .map(([centre, along, radius]) => ({
    kind: "cylinder",
    centre,
    axis: along,
    zero: across(along),
    radius,
  }));
const cone: fc.Arbitrary<Surface> = fc
  .tuple(place, fc.boolean(), fc.double({ min: 0.05, max: 1.4, noNaN: true }))
  .map(([tip, isUp, halfAngle]) => ({
    kind: "cone",
    tip,
    axis: [0, 0, isUp ? -1 : 1],
    zero: [1, 0, 0],
    halfAngle,
  }));
const surface = fc.oneof(plane, cylinder, cone);

/** A flat place that the face of a surface can have: within one turn. */
const flatOn = (on: Surface): fc.Arbitrary<Point> => {
  switch (on.kind) {
    case "plane":
      return fc.tuple(part, part);
    case "cylinder":
      return fc
        .tuple(fc.double({ min: 0.001, max: 0.999, noNaN: true }), part)
        .map(([turn, v]) => [turn * 2 * Math.PI * on.radius, v]);
    case "cone": {
      const most = Math.PI * Math.sin(on.halfAngle) * 0.999;
      const down = on.axis[2] < 0 ? -1 : 1;
      return fc
        .tuple(
          fc.double({ min: -most, max: most, noNaN: true }),
          fc.double({ min: 1, max: 500, noNaN: true }),
        )
        .map(([angle, reach]) => [reach * Math.sin(angle), reach * Math.cos(angle) * down]);
    }
  }
};
const spot = surface.chain((on) => flatOn(on).map((flat) => ({ on, flat })));

describe("a flat point of a face", () => {
  test("lifted and laid flat again is where it was", () => {
    fc.assert(
      fc.property(spot, ({ on, flat }) => {
        const [u, v] = flattenPoint(on, liftPoint(on, flat));
        expect(Math.hypot(u - flat[0], v - flat[1])).toBeLessThan(1e-6);
      }),
    );
  });

  test("lies on its surface", () => {
    fc.assert(
      fc.property(spot, ({ on, flat }) => {
        expect(Math.abs(distanceFrom(on, liftPoint(on, flat)))).toBeLessThan(1e-9);
      }),
    );
  });

  test("keeps small distances, so that cloth neither stretches nor gathers", () => {
    const step = 1e-3;
    fc.assert(
      fc.property(spot, fc.double({ min: 0, max: 6.3, noNaN: true }), ({ on, flat }, angle) => {
        const other: Point = [flat[0] + step * Math.cos(angle), flat[1] + step * Math.sin(angle)];
        const apart = distance3(liftPoint(on, flat), liftPoint(on, other));
        // Over a step the curve takes off no more than step² / reach.
        expect(Math.abs(apart / step - 1)).toBeLessThan(2e-3);
      }),
    );
  });

  test("runs to the right and up seen from outside: right × up is the outward normal", () => {
    const step = 1e-4;
    fc.assert(
      fc.property(spot, ({ on, flat }) => {
        const at = liftPoint(on, flat);
        const [right, up] = [
          liftPoint(on, [flat[0] + step, flat[1]]),
          liftPoint(on, [flat[0], flat[1] + step]),
        ].map((to) => unit3([to[0] - at[0], to[1] - at[1], to[2] - at[2]]));
        expect(dot3(cross3(right!, up!), normalOf(on, at))).toBeGreaterThan(0.99);
      }),
    );
  });
});

describe("points put on surfaces", () => {
  test("lie on all three of them", () => {
    const three: readonly Surface[] = [
      { kind: "plane", origin: [0, 0, 50], across: [1, 0, 0], rise: [0, 1, 0] },
      { kind: "cylinder", centre: [0, 0, 0], axis: [0, 0, 1], zero: [1, 0, 0], radius: 100 },
      { kind: "plane", origin: [60, 0, 0], across: [0, 1, 0], rise: [0, 0, 1] },
    ];
    // A 3-4-5 triangle: 60 and 80 make 100.
    const [x, y, z] = polishPoint([60.2, 79.7, 50.1], three);
    expect([x, y, z]).toEqual([
      expect.closeTo(60, 8),
      expect.closeTo(80, 8),
      expect.closeTo(50, 8),
    ]);
  });

  test("where a side runs on into a round lie on the line of touch to the last digit", () => {
    const touching: readonly Surface[] = [
      { kind: "plane", origin: [0, 100, 0], across: [1, 0, 0], rise: [0, 0, 1] },
      { kind: "cylinder", centre: [0, 0, 0], axis: [0, 0, 1], zero: [1, 0, 0], radius: 100 },
    ];
    const [x, y] = polishPoint([0.01, 99.99, 7], touching);
    expect(x).toBeCloseTo(0, 8);
    expect(y).toBeCloseTo(100, 8);
  });

  test("dropped onto a surface lie on it", () => {
    fc.assert(
      fc.property(surface, place, (on, at) => {
        const start = on.kind === "plane" ? at : liftPoint(on, [50, on.kind === "cone" ? 90 : 20]);
        const moved = [start[0] + 0.1, start[1] - 0.1, start[2] + 0.05] as const;
        expect(Math.abs(distanceFrom(on, dropOnto(on, moved)))).toBeLessThan(1e-6);
      }),
    );
  });
});

describe("two surfaces", () => {
  test("are one only where they face the same way", () => {
    const top: Surface = { kind: "plane", origin: [0, 0, 50], across: [1, 0, 0], rise: [0, 1, 0] };
    const under: Surface = { ...top, across: [-1, 0, 0] };
    expect(isSameSurface(top, { ...top, origin: [300, -20, 50] })).toBe(true);
    expect(isSameSurface(top, under)).toBe(false);
    expect(isSameSurface(top, { ...top, origin: [0, 0, 51] })).toBe(false);
  });
});
