import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  flip,
  halfOf,
  patternBounds,
  placePattern,
  quarterTurn,
  whyNoHalf,
} from "../../lib/booklet/place-pattern.ts";
import type { LaidPiece } from "../../lib/booklet/place-pattern.ts";
import { papers } from "../../lib/booklet/paper.ts";
import { patternSheets } from "../../lib/booklet/pattern-sheets.ts";
import { loopArea } from "../../lib/plane/loop-area.ts";
import { line } from "../../lib/plane/segments.ts";
import type { Point } from "../../lib/plane/types.ts";
import { circle, patch } from "../fixtures/small-cover.ts";
import { smallPlan } from "../fixtures/small-plan.ts";
import { plain } from "../fixtures/small-solid.ts";

const laid = (corners: readonly Point[], notches: readonly Point[] = []): LaidPiece => {
  const loop = corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]!));
  return {
    piece: {
      ...patch,
      outline: plain(loop),
      finished: plain(loop),
      edges: [],
      clips: [],
      marks: [],
      notches: notches.map((at, i) => ({ at, towards: -Math.PI / 2, seam: "A", number: i + 1 })),
    },
    folds: [],
    up: [0, 1],
  };
};

/** A bay window's trapezium: 120 along the back, 102 along the front. */
const bay: readonly Point[] = [
  [9, 0],
  [111, 0],
  [120, 42],
  [0, 42],
];

// A panel whose notches are not mirror images was once printed whole without a word.
describe("why a piece has no half", () => {
  test.each([
    ["a trapezium", laid(bay), null],
    ["one with a notch on one side only", laid(bay, [[30, 42]]), "marks"],
    ["one with the notch on both sides", laid(bay, [[30, 42], [90, 42]]), null], // prettier-ignore
    ["a wedge that is no mirror image", laid([[0, 0], [50, 0], [80, 30], [0, 20]]), "outline"], // prettier-ignore
  ] as const)("%s", (_, piece, reason) => {
    expect(whyNoHalf(piece)).toBe(reason);
  });
});

describe("the half to lay on a fold", () => {
  test("of a trapezium is the part right of its middle", () => {
    expect(halfOf(laid(bay))).toEqual({
      bounds: { min: [60, 0], max: [120, 42] },
      fold: [
        [60, 0],
        [60, 42],
      ],
    });
  });

  test("of the same piece turned is the part above its middle", () => {
    const half = halfOf(placePattern(laid(bay), quarterTurn))!;
    expect(half.fold[0][1]).toBeCloseTo(60);
    expect(half.fold[1][1]).toBeCloseTo(60);
  });

  test("is not there where one corner is moved by a millimetre", () => {
    expect(halfOf(laid([[9, 0], [110, 0], ...bay.slice(2)]))).toBeNull();
  });

  test("is not there where one side alone has a notch", () => {
    expect(halfOf(laid(bay, [[30, 0]]))).toBeNull();
    expect(halfOf(laid(bay, [[30, 0], [90, 0]]))).not.toBeNull(); // prettier-ignore
  });
});

describe("a pattern moved", () => {
  const corner = fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 300 }));

  test("keeps its area and its sense of turning, flipped and turned alike", () => {
    fc.assert(
      fc.property(corner, corner, corner, (...corners) => {
        const piece = laid(corners);
        const area = loopArea(piece.piece.outline.outer);
        for (const placement of [flip, quarterTurn]) {
          expect(loopArea(placePattern(piece, placement).piece.outline.outer)).toBeCloseTo(area, 6);
        }
      }),
      { numRuns: 60, seed: 9 },
    );
  });

  test("flipped twice is what it was", () => {
    const once = placePattern(laid(bay, [[30, 0]]), flip);
    expect(patternBounds(once)).toEqual({ min: [-120, 0], max: [0, 42] });
    const twice = placePattern(once, flip);
    expect(twice.piece.notches[0]!.at).toEqual([30, 0]);
    expect(twice.piece.notches[0]!.towards).toBeCloseTo(-Math.PI / 2, 12);
  });
});

describe("sheets", () => {
  // The discs are drawn as finished: on cloth that shrinks their cut line would be enlarged.
  const stock = smallPlan.project.stock.map((one) =>
    one.kind === "fabric" ? { ...one, shrink: 0 } : one,
  );
  const plan = (count: number, radius: number) => ({
    ...smallPlan,
    project: { ...smallPlan.project, stock },
    covers: [],
    pieces: Array.from({ length: count }, (_, i) => ({
      ...patch,
      id: `disc-${i + 1}`,
      label: `disc ${i + 1}`,
      outline: plain(circle(radius)),
      finished: plain(circle(radius - 10, radius)),
    })),
  });

  // 200 mm discs: A4 leaves 170 × 237 mm, A3 257 × 360, Tabloid 241 × 378, so each needs a sheet of its
  // own there; discs of 80 mm go two across and two up on A4 with 6 mm between.
  test.each([
    ["a4", 4, 40, 1],
    ["a4", 5, 40, 2],
    ["a3", 6, 40, 1],
    ["tabloid", 3, 100, 3],
  ] as const)("on %s %i discs of radius %i take %i", (paper, count, radius, sheets) => {
    expect(patternSheets(plan(count, radius), paper).sheets.length - 1).toBe(sheets);
  });

  test("a strip too long for upright paper is turned to save a sheet", () => {
    const strip = { ...patch, ...laid([[0, 0], [220, 5], [220, 60], [0, 55]]).piece }; // prettier-ignore
    const { sheets } = patternSheets({ ...smallPlan, covers: [], pieces: [strip] }, "a4");
    expect(sheets).toHaveLength(2);
  });

  test("a half takes half the sheets of a large disc, and says what to do at the fold", () => {
    const whole = patternSheets(plan(1, 300), "a4").sheets;
    const half = patternSheets(plan(1, 300), "a4", { halves: true, isMirrored: false }).sheets;
    expect(half.length - 1).toBeLessThanOrEqual((whole.length - 1) / 2 + 1);
    expect(half.map(({ svg }) => svg).join()).toContain("Lay on the fold");
  });

  test("a piece that has no half is said to be whole, on the map too", () => {
    const wedge = { ...patch, ...laid([[0, 0], [50, 0], [80, 30], [0, 20]]).piece }; // prettier-ignore
    const odd = { ...smallPlan, covers: [], pieces: [wedge] };
    const { wholes, notes } = patternSheets(odd, "a4", { halves: true, isMirrored: false });
    expect(wholes).toEqual([expect.stringMatching(/ is drawn whole: its outline has no middle/)]);
    expect(notes).toContain(wholes[0]);
    expect(patternSheets(odd, "a4").wholes).toEqual([]);
  });

  test("a mirrored sheet is named so", () => {
    const { sheets } = patternSheets(plan(1, 40), "a4", { halves: false, isMirrored: true });
    expect(sheets[1]!.title).toContain("mirrored");
    expect(papers.a4.label).toBe("A4");
  });
});
