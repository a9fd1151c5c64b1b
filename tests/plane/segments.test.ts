import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flattenLoop } from "../../lib/plane/flatten-loop.ts";
import { loopArea, shapeArea } from "../../lib/plane/loop-area.ts";
import { loopBounds, pointBounds } from "../../lib/plane/loop-bounds.ts";
import { mergeCollinear } from "../../lib/plane/merge-collinear.ts";
import { distance } from "../../lib/plane/points.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import {
  arcSweep,
  directionAlong,
  line,
  pointAlong,
  reverseSegment,
  segmentLength,
} from "../../lib/plane/segments.ts";
import type { Loop, Segment } from "../../lib/plane/types.ts";
import { circle, closed, roundedSquare } from "../fixtures/loops.ts";

/** An arc and the chord back. */
const capOf = (radius: number, angle: number): Loop => {
  const to = [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
  return [
    { kind: "arc", from: [radius, 0], to, centre: [0, 0], isClockwise: false },
    line(to, [radius, 0]),
  ];
};

describe("a circular segment", () => {
  // Machinery's Handbook, "Segments of circles for radius = 1": arc length and area; from memory.
  test.each([
    { degrees: 60, length: 1.0472, area: 0.0906 },
    { degrees: 90, length: 1.5708, area: 0.2854 },
    { degrees: 120, length: 2.0944, area: 0.6142 },
    { degrees: 180, length: 3.1416, area: 1.5708 },
  ])("of $degrees° has the tabled length and area", ({ degrees, length, area }) => {
    const cap = capOf(1, (degrees * Math.PI) / 180);
    expect(segmentLength(cap[0]!)).toBeCloseTo(length, 4);
    expect(loopArea(cap)).toBeCloseTo(area, 4);
  });

  // Weisstein, "Circular Segment", MathWorld: A = R² (θ − sin θ) / 2.
  test("of any angle follows the formula", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 0.01, max: 6.2, noNaN: true }),
        (radius, angle) => {
          const wanted = (radius ** 2 * (angle - Math.sin(angle))) / 2;
          expect(Math.abs(loopArea(capOf(radius, angle)) - wanted)).toBeLessThan(
            1e-9 * radius ** 2,
          );
        },
      ),
    );
  });
});

const anyArc: fc.Arbitrary<Segment & { kind: "arc" }> = fc
  .record({
    radius: fc.integer({ min: 1, max: 500 }),
    start: fc.double({ min: -3, max: 3, noNaN: true }),
    sweep: fc.double({ min: 0.01, max: 6.2, noNaN: true }),
    isClockwise: fc.boolean(),
    x: fc.integer({ min: -100, max: 100 }),
    y: fc.integer({ min: -100, max: 100 }),
  })
  .map(({ radius, start, sweep, isClockwise, x, y }) => {
    const at = (angle: number) =>
      [x + radius * Math.cos(angle), y + radius * Math.sin(angle)] as const;
    const end = start + (isClockwise ? -sweep : sweep);
    return { kind: "arc", from: at(start), to: at(end), centre: [x, y], isClockwise };
  });

describe("an arc", () => {
  test("walked back has its length and the opposite sweep", () => {
    fc.assert(
      fc.property(anyArc, (arc) => {
        const back = reverseSegment(arc) as typeof arc;
        expect(segmentLength(back)).toBeCloseTo(segmentLength(arc), 6);
        expect(arcSweep(back)).toBeCloseTo(-arcSweep(arc), 9);
        expect(distance(pointAlong(back, 0.3), pointAlong(arc, 0.7))).toBeLessThan(1e-6);
      }),
    );
  });

  test("is left along its tangent", () => {
    fc.assert(
      fc.property(anyArc, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (arc, share) => {
        const [before, after] = [pointAlong(arc, share - 1e-6), pointAlong(arc, share + 1e-6)];
        const [dx, dy] = directionAlong(arc, share);
        const step = distance(before, after);
        expect((after[0] - before[0]) / step).toBeCloseTo(dx, 3);
        expect((after[1] - before[1]) / step).toBeCloseTo(dy, 3);
      }),
    );
  });

  test("flattened strays no further than was asked", () => {
    fc.assert(
      fc.property(anyArc, fc.double({ min: 0.001, max: 1, noNaN: true }), (arc, tolerance) => {
        const loop: Loop = [arc, line(arc.to, arc.from)];
        const corners = [...flattenLoop(loop, tolerance)];
        const radius = distance(arc.from, arc.centre);
        corners.slice(1).forEach((corner, i) => {
          const middle = [
            (corner[0] + corners[i]![0]) / 2,
            (corner[1] + corners[i]![1]) / 2,
          ] as const;
          expect(radius - distance(middle, arc.centre)).toBeLessThan(tolerance + 1e-9);
        });
      }),
    );
  });

  test("fills its bounds and no more", () => {
    fc.assert(
      fc.property(anyArc, (arc) => {
        const { min, max } = loopBounds([arc]);
        const points = Array.from({ length: 2001 }, (_, i) => pointAlong(arc, i / 2000));
        const seen = pointBounds(points);
        // Two thousand points miss an extreme by at most r (1 − cos(π / 2000)).
        [0, 1].forEach((axis) => {
          expect(Math.abs(seen.min[axis]! - min[axis]!)).toBeLessThan(2e-3);
          expect(Math.abs(seen.max[axis]! - max[axis]!)).toBeLessThan(2e-3);
        });
      }),
    );
  });
});

describe("the area of a loop", () => {
  test("is that of the square with quarter rounds, 4 (1 − π / 4) r² less", () => {
    expect(loopArea(roundedSquare(100, 20))).toBeCloseTo(100 ** 2 - (4 - Math.PI) * 20 ** 2, 9);
  });

  test("is that of a circle, whichever way it is walked", () => {
    expect(loopArea(circle([30, -20], 50))).toBeCloseTo(Math.PI * 2500, 9);
    const back = circle([0, 0], 50).toReversed().map(reverseSegment);
    expect(loopArea(back)).toBeCloseTo(-Math.PI * 2500, 9);
  });

  test("of a shape leaves out its holes", () => {
    const shape = {
      outer: closed([
        [0, 0],
        [100, 0],
        [100, 60],
        [0, 60],
      ]),
      holes: [circle([50, 30], 20)],
    };
    expect(shapeArea(shape)).toBeCloseTo(6000 - Math.PI * 400, 9);
  });

  // The surveyor's formula on a polygon worked by hand: a 3-4-5 triangle.
  test("of corners is positive counter-clockwise and 0 for fewer than three", () => {
    expect(
      polygonArea([
        [0, 0],
        [4, 0],
        [0, 3],
      ]),
    ).toBe(6);
    expect(
      polygonArea([
        [0, 0],
        [0, 3],
        [4, 0],
      ]),
    ).toBe(-6);
    expect(
      polygonArea([
        [0, 0],
        [4, 0],
      ]),
    ).toBe(0);
  });
});

describe("straight runs", () => {
  test("in one piece keep area and outline", () => {
    const loop = closed([
      [0, 0],
      [30, 0],
      [100, 0],
      [100, 50],
      [60, 50],
      [0, 50],
      [0, 20],
    ]);
    const merged = mergeCollinear(loop);
    expect(merged.length).toBe(4);
    expect(loopArea(merged)).toBeCloseTo(loopArea(loop), 9);
  });

  test("that meet at a corner stay two", () => {
    expect(
      mergeCollinear(
        closed([
          [0, 0],
          [50, 1],
          [100, 0],
          [50, 80],
        ]),
      ).length,
    ).toBe(4);
  });
});
