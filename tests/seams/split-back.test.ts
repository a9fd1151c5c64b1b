import { describe, expect, test } from "vitest";
import { box, inch, inches, rounded } from "../fixtures/blocks.ts";
import { cutInches, listPanels, makeCover } from "../fixtures/make-cover.ts";

const sides = ["top", "underside", "front", "right", "back", "left"].map((side) => `pad/${side}`);
const allApart = sides.map((face) => ({ name: face, faces: [face] }));

const withZip = (size: readonly [number, number, number], seam: number, zip: number) =>
  makeCover([box("pad", inches(...size))], {
    panels: allApart,
    seamAllowance: seam * inch,
    allowances: { zip: zip * inch, opening: null },
    closing: { kind: "zip", stock: null, across: "pad/back" },
  }).cover;

describe("a zip in the middle of the boxing", () => {
  // Check value C1. Instructables Q&A, "Calculating yardage, bench cushions": foam 32 5/8 × 14 5/8 × 3 in,
  // 5/8 in seams, the back split for a closure: two strips of 33 7/8 × 3 in.
  // http://www.instructables.com/answers/calculating-yardage-bench-cushions/
  test("splits the back into two strips of 33 7/8 by 3 in, as the worked bench cushion", () => {
    const cover = withZip([32 + 5 / 8, 14 + 5 / 8, 3], 5 / 8, 7 / 8);
    const strips = cover.pieces.filter(({ label }) => label.startsWith("pad/back"));
    expect(strips.length).toBe(2);
    for (const strip of strips) {
      const [width, length] = cutInches(strip);
      expect(width).toBeCloseTo(3, 9);
      expect(Math.abs(length! - (33 + 7 / 8))).toBeLessThan(1 / 64);
    }
  });

  // Check value C7. Handbook copy: each zip strip is half the cut boxing and 3/4 in wide.
  // https://www.somethingfortheroad.com/2011/03/how-to-boxed-cushion-cover-with-a-zipper.html
  test.each([2, 3, 4, 5])(
    "cuts each strip of %d in boxing half its cut width and 3/4 in",
    (thick) => {
      const cover = withZip([20, 18, thick], 1 / 2, 3 / 4);
      const front = cover.pieces.find(({ label }) => label === "pad/front")!;
      const strips = cover.pieces.filter(({ label }) => label.startsWith("pad/back"));
      const [boxing] = cutInches(front);
      strips.forEach((strip) => expect(cutInches(strip)[0]).toBeCloseTo(boxing! / 2 + 3 / 4, 9));
    },
  );

  test("opens along the middle, folds back and can be sewn, the zip first", () => {
    const cover = withZip([20, 18, 3], 1 / 2, 3 / 4);
    expect(cover.refolds.ok).toBe(true);
    expect(cover.refolds.worst).toBeLessThan(1e-6);
    expect(cover.sewable).toEqual({ ok: true, faults: [] });
    const closing = cover.passes.findIndex(({ state }) => state === "closing");
    expect(closing).toBeGreaterThanOrEqual(0);
    expect(closing).toBeLessThan(5);
    expect(cover.opening!.run / inch).toBeCloseTo(20, 9);
    cover.seams.forEach(({ length }) => expect(length[0]).toBeCloseTo(length[1], 9));
  });

  test("joins each half to its own neighbours where the rule is left to the program", () => {
    const { cover } = makeCover([box("pad", inches(20, 18, 3))], {
      closing: { kind: "zip", stock: null, across: "pad/back" },
    });
    const seam = cover.seams.find(({ state }) => state === "closing")!;
    expect(seam.length[0] / inch).toBeCloseTo(20, 9);
    expect(cover.refolds.ok).toBe(true);
    expect(cover.sewable.ok).toBe(true);
  });

  // Common practice, no source: the zip goes into its two strips first, the strips are joined to the rest
  // of the boxing end to end, straight over both, and then the plates go on.
  test("ends its strips at seams where the corners are round, and sews them first", () => {
    const corners = ["front-left", "front-right", "back-left", "back-right"] as const;
    const band = ["lid/around", "lid/left", "lid/front", "lid/right"];
    const { cover } = makeCover([rounded("lid", [700, 400, 80], 60, corners)], {
      panels: listPanels(["lid/back"], ["lid/top"], ["lid/underside"], band),
      closing: { kind: "zip", stock: null, across: "lid/back" },
    });
    // A half may hang on its plate; at its two ends it is sewn.
    const halves = cover.panels.filter(({ faces }) =>
      faces.some(({ face }) => face.startsWith("lid/back")),
    );
    expect(halves.length).toBe(2);
    for (const { faces } of halves)
      expect(faces.some(({ face }) => face.includes("around"))).toBe(false);
    const [zip, first, second] = cover.passes;
    expect(zip!.state).toBe("closing");
    for (const join of [first!, second!]) {
      expect(join.length).toBeCloseTo(80, 6);
      expect(join.corners).toEqual([]);
    }
    expect(second!.makes).toBe("the boxing");
    expect(cover.sewable.faults).toEqual([]);
    expect(cover.refolds.ok).toBe(true);
  });
});
