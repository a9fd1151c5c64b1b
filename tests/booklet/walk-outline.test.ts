import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { describeWalk } from "../../lib/booklet/describe-walk.ts";
import { makeFormat } from "../../lib/units/make-format.ts";
import { replayWalk, startAtLowestLeft, walkOutline } from "../../lib/booklet/walk-outline.ts";
import { line } from "../../lib/plane/segments.ts";
import type { Loop, Point } from "../../lib/plane/types.ts";
import { circle, tee } from "../fixtures/small-cover.ts";
import { rectangle } from "../fixtures/small-solid.ts";

const closed = (corners: readonly Point[]): Loop =>
  corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]!));

/** A star of any number of corners round a centre: never crosses itself. */
const star = fc
  .array(
    fc.record({
      radius: fc.double({ min: 20, max: 900, noNaN: true }),
      gap: fc.double({ min: 0.2, max: 1, noNaN: true }),
    }),
    {
      minLength: 3,
      maxLength: 12,
    },
  )
  .map((spokes) => {
    const total = spokes.reduce((sum, { gap }) => sum + gap, 0);
    let angle = 0;
    return spokes.map(({ radius, gap }): Point => {
      angle += (gap / total) * 2 * Math.PI;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
  });

/** A slot: two straight sides and two half circles, lying at any angle. */
const slot = fc
  .record({
    length: fc.double({ min: 10, max: 500, noNaN: true }),
    radius: fc.double({ min: 5, max: 200, noNaN: true }),
  })
  .map(({ length, radius }): Loop => [
    line([0, -radius], [length, -radius]),
    {
      kind: "arc",
      from: [length, -radius],
      to: [length, radius],
      centre: [length, 0],
      isClockwise: false,
    },
    line([length, radius], [0, radius]),
    { kind: "arc", from: [0, radius], to: [0, -radius], centre: [0, 0], isClockwise: false },
  ]);

const expectSameCorners = (loop: Loop): void => {
  const walk = walkOutline(loop);
  const corners = startAtLowestLeft(loop).map(({ to }) => to);
  replayWalk(walk).forEach((corner, i) => {
    expect(corner[0]).toBeCloseTo(corners[i]![0], 6);
    expect(corner[1]).toBeCloseTo(corners[i]![1], 6);
  });
};

describe("walking round an outline", () => {
  test("followed blindly, gives the outline back", () => {
    fc.assert(
      fc.property(star, (corners) => expectSameCorners(closed(corners))),
      { numRuns: 100 },
    );
  });

  test("followed blindly, gives curved outlines back", () => {
    fc.assert(fc.property(slot, expectSameCorners), { numRuns: 100 });
  });

  test("is as long as the outline, along its arcs", () => {
    const length = walkOutline(circle(50)).legs.reduce((sum, leg) => sum + leg.length, 0);
    expect(length).toBeCloseTo(2 * Math.PI * 50, 9);
  });

  test("starts at the lowest corner, the leftmost of two", () => {
    expect(walkOutline(tee(480, 430, 15)).start).toEqual([15, 0]);
    expect(
      walkOutline(
        closed([
          [5, 9],
          [0, 3],
          [8, 3],
        ]),
      ).start,
    ).toEqual([0, 3]);
  });

  test("turns left at outward corners and right at inward ones", () => {
    const turns = walkOutline(tee(480, 430, 100)).legs.map(({ turn }) =>
      Math.round((turn * 180) / Math.PI),
    );
    expect(turns).toEqual([0, 90, -90, 90, 90, 90, 90, -90]);
  });

  test("of nothing has no legs", () => {
    expect(walkOutline([]).legs).toEqual([]);
  });
});

describe("a walk in words", () => {
  const inches = makeFormat({ units: "in", round: 1 / 8 });

  test("names lengths, turns and where each leg ends", () => {
    const { legs, checks } = describeWalk(rectangle(62 * 25.4, 21 * 25.4), "p", inches);
    expect(legs.map(({ words }) => words)).toEqual([
      "Go 62 in to the right.",
      "Turn left. Go 21 in up.",
      "Turn left. Go 62 in to the left.",
      "Turn left. Go 21 in down, back to the start.",
    ]);
    expect(legs.map(({ across, up }) => [across, up])).toEqual([
      ["62 in", "0 in"],
      ["62 in", "21 in"],
      ["0 in", "21 in"],
      ["0 in", "0 in"],
    ]);
    expect(checks).toEqual([
      "From the start to the corner at 62 in across and 21 in up: 65 7/16 in.",
      "From the corner at 62 in across and 0 in up to the corner at 0 in across and 21 in up: 65 7/16 in.",
    ]);
  });

  // What broke: a piece whose lowest corner is not its leftmost printed corners at "-5 in".
  test("measures from the box round the piece, so that no figure is negative", () => {
    const { intro, legs, checks } = describeWalk(
      tee(480, 430, 100),
      "p",
      makeFormat({ units: "mm", round: 1 }),
    );
    expect(intro).toContain("100 mm from its left end");
    expect(legs.map(({ across }) => across)).toEqual([
      "380 mm",
      "380 mm",
      "480 mm",
      "480 mm",
      "0 mm",
      "0 mm",
      "100 mm",
      "100 mm",
    ]);
    expect([...legs.flatMap(({ across, up }) => [across, up]), ...checks].join()).not.toMatch(
      /-\d/,
    );
  });

  test("draws a whole circle by its radius", () => {
    const { intro, legs } = describeWalk(circle(254), "p", inches);
    expect(intro).toContain("radius 10 in");
    expect(legs).toEqual([]);
  });

  test("gives radius, angle and length of a curve", () => {
    const quarter: Loop = [
      line([0, 0], [100, 0]),
      { kind: "arc", from: [100, 0], to: [0, 100], centre: [0, 0], isClockwise: false },
      line([0, 100], [0, 0]),
    ];
    const { legs } = describeWalk(quarter, "p", makeFormat({ units: "mm", round: 1 }));
    expect(legs[1]!.words).toBe(
      "Turn left. Follow a curve to the left of radius 100 mm through 90°, 157 mm along it.",
    );
    expect(legs[2]!.words).toBe("Turn left. Go 100 mm down, back to the start.");
  });
});
