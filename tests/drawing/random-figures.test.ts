import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawFigure } from "../../lib/drawing/index.ts";
import type { DrawingInput } from "../../lib/drawing/types.ts";
import type { Cut, CutPlan, Offcut, CutPlace } from "../../lib/packing/types.ts";
import type { Point } from "../../lib/plane/types.ts";
import { draftPiece } from "../fixtures/drawing/pieces.ts";
import { plainProject } from "../fixtures/drawing/project.ts";

const nothing: DrawingInput = {
  project: { ...plainProject, units: "cm" },
  solids: [],
  covers: [],
  pieces: [],
  lays: [],
  slabs: [],
  sheets: [],
  boards: [],
  steps: [],
};
const size = fc.integer({ min: 60, max: 1500 });
const share = fc.integer({ min: 20, max: 80 });

describe("figures of things nobody foresaw", () => {
  test("a rectangle of any size is lettered, measured and named without a collision", () => {
    fc.assert(
      fc.property(size, size, (w, h) => {
        const corners: Point[] = [
          [0, 0],
          [w, 0],
          [w, h],
          [0, h],
        ];
        const piece = draftPiece({
          id: "P1",
          label: "front and seat",
          corners,
          seams: ["A", "B", "C", "D"],
          allowance: 15,
        });
        expect(drawFigure({ ...nothing, pieces: [piece] }, "panel/P1")?.collisions).toEqual([]);
      }),
      { numRuns: 60, seed: 1 },
    );
  });

  test("an L of any proportions is lettered, measured and named without a collision", () => {
    fc.assert(
      fc.property(size, size, share, share, (w, h, a, b) => {
        const [x, y] = [(w * a) / 100, (h * b) / 100];
        const corners: Point[] = [
          [0, 0],
          [w, 0],
          [w, h],
          [x, h],
          [x, y],
          [0, y],
        ];
        const seams = ["A", "B", "C", "D", "E", "F"];
        const piece = draftPiece({
          id: "P2",
          label: "left side",
          corners,
          seams,
          allowance: 15,
          mirrorOf: "P1",
          clips: [4],
        });
        expect(drawFigure({ ...nothing, pieces: [piece] }, "panel/P2")?.collisions).toEqual([]);
      }),
      { numRuns: 60, seed: 2 },
    );
  });

  test("a slab cut right across again and again is numbered and named without a collision", () => {
    const halves = fc.array(fc.tuple(fc.boolean(), share), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(halves, (choices) => {
        const plan = slabOf(choices);
        expect(drawFigure({ ...nothing, slabs: [plan] }, "slab/foam/1")?.collisions).toEqual([]);
      }),
      { numRuns: 40, seed: 4 },
    );
  });
});

/** Divide a slab, each time the piece left over: along or across, at a share of its size. */
function slabOf(choices: readonly [boolean, number][]): CutPlan {
  let rest: Offcut = { at: [0, 0, 0], size: [2000, 600, 80], use: null };
  const cuts: Cut[] = [];
  const places: CutPlace[] = [];
  choices.forEach(([isRip, percent], index) => {
    const axis = isRip ? 1 : 0;
    const length = ((rest.size[axis] ?? 0) * percent) / 100;
    const at = (rest.at[axis] ?? 0) + length;
    cuts.push({
      order: index + 1,
      kind: isRip ? "rip" : "cross",
      axis,
      at,
      of: { at: rest.at, size: rest.size },
    });
    const replace = (values: readonly number[], value: number) =>
      values.map((old, i) => (i === axis ? value : old));
    places.push({
      part: `pad/part-${index + 1}`,
      copy: 1,
      at: rest.at,
      size: replace(rest.size, length),
      layer: [1, 1],
      outline: null,
    });
    rest = {
      at: replace(rest.at, at),
      size: replace(rest.size, (rest.size[axis] ?? 0) - length),
      use: null,
    };
  });
  return {
    stock: "foam",
    kind: "slab",
    needed: 1,
    have: 1,
    lowerBound: 1,
    short: [],
    used: [{ stockIndex: 0, size: [2000, 600, 80], places, cuts, offcuts: [rest] }],
  };
}
