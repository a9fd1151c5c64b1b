import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boxOfPoints, segmentMeetsBox } from "../../lib/drawing/boxes.ts";
import { findCollisions } from "../../lib/drawing/find-collisions.ts";
import { pathOf } from "../../lib/drawing/paper-path.ts";
import { placeBeside } from "../../lib/drawing/place-beside.ts";
import { placeLabels } from "../../lib/drawing/place-labels.ts";
import type { Candidate, Label, PathInk } from "../../lib/drawing/types.ts";
import type { Point } from "../../lib/plane/types.ts";

const at = fc.tuple(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 0, max: 120 }));
const word = fc.constantFrom("P1", "left side", "this edge to the top", "24 1/2 in");
const place = (point: Point): Candidate => ({ at: point, anchor: "middle", leader: null });
const line = (from: Point, to: Point): PathInk => ({
  kind: "path",
  className: "line cut",
  isObstacle: true,
  paths: [pathOf([from, to])],
});

describe("placing labels", () => {
  test("never lets a label it calls clear touch a line or another label", () => {
    const labels = fc.array(fc.tuple(word, fc.array(at, { minLength: 1, maxLength: 6 })), {
      minLength: 1,
      maxLength: 12,
    });
    const lines = fc.array(fc.tuple(at, at), { maxLength: 6 });
    fc.assert(
      fc.property(labels, lines, (wanted, drawn) => {
        const inks = drawn.map(([from, to]) => line(from, to));
        const asked = wanted.map(([text, points]): Label => ({
          lines: [text],
          style: "label",
          candidates: points.map(place),
        }));
        const { inks: placed, collisions } = placeLabels(asked, inks);
        expect(placed.filter(({ kind }) => kind === "text")).toHaveLength(asked.length);
        if (collisions.length === 0) expect(findCollisions([...inks, ...placed])).toEqual([]);
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  test("reports a label for which there is no room", () => {
    const label: Label = { lines: ["left side"], style: "label", candidates: [place([10, 10])] };
    expect(placeLabels([label], [line([0, 10], [40, 10])]).collisions).toEqual([
      'No clear place for "left side".',
    ]);
    expect(placeLabels([label, label], []).collisions).toHaveLength(1);
  });

  test("takes the first place that is clear", () => {
    const label: Label = {
      lines: ["P1"],
      style: "name",
      candidates: [place([10, 10]), place([10, 30])],
    };
    const { inks } = placeLabels([label], [line([0, 10], [40, 10])]);
    expect(inks[0]).toMatchObject({ at: [10, 30] });
  });
});

describe("naming things from the margins", () => {
  test("never overlaps two names, wherever the things lie", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(word, at), { minLength: 1, maxLength: 14 }), (things) => {
        const callouts = things.map(([text, to]) => ({
          lines: [text],
          style: "label" as const,
          to,
        }));
        const inks = placeBeside(
          callouts,
          boxOfPoints([
            [0, 0],
            [120, 120],
          ]),
        );
        const texts = inks.filter((ink) => ink.kind === "text");
        expect(texts).toHaveLength(things.length);
        expect(findCollisions(texts)).toEqual([]);
      }),
      { numRuns: 200, seed: 5 },
    );
  });
});

describe("telling whether a line runs through a box", () => {
  const box = { left: 0, top: 0, right: 10, bottom: 4 };
  // Worked by hand; the clip is Liang and Barsky's, ACM Transactions on Graphics 3(1), 1984.
  test.each([
    ["across", [-5, 2], [15, 2], true],
    ["along its edge", [-5, 0], [15, 0], false],
    ["past its corner", [-5, 2], [2, -5], false],
    ["inside", [2, 1], [3, 2], true],
    ["short of it", [-5, 2], [-1, 2], false],
    ["down through a corner", [8, -2], [12, 2], false],
    ["down through both sides", [4, -3], [6, 9], true],
  ] as const)("%s", (_, from, to, meets) => {
    expect(segmentMeetsBox([...from], [...to], box)).toBe(meets);
  });
});
