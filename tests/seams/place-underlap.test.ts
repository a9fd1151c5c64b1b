import { describe, expect, test } from "vitest";
import { arcRadius, arcSweep } from "../../lib/plane/segments.ts";
import { placeUnderlap } from "../../lib/seams/place-underlap.ts";
import { box, cylinder, frustum } from "../fixtures/blocks.ts";
import { arcsOf, makeCover, pieceNamed } from "../fixtures/make-cover.ts";

const tape = { closing: { kind: "hook-and-loop", stock: null } } as const;
const between = (...faces: readonly [string, string]) => ({
  open: [{ kind: "between", faces, length: 600 }] as const,
});

describe("the strip behind a taped opening", () => {
  test("of a drum is straight, sewn to the disc and hanging down behind the side", () => {
    const { cover } = makeCover([cylinder("c", 450, 360)], {
      ...tape,
      seamAllowance: 15,
      ...between("c/underside", "c/around"),
    });
    const pass = cover.passes.find(({ state }) => state === "closing")!;
    const panel = (label: string) => cover.panels.find((one) => one.label === label)!.id;
    expect(placeUnderlap(pass, cover)).toMatchObject({
      on: panel("underside"),
      behind: panel("round side"),
      shape: "straight",
      isRound: true,
    });
    const strip = pieceNamed(cover, "underlap strip");
    expect(strip.cut).toBe(1);
    // As long as the opening, twice 40 mm wide, 15 mm all round.
    expect(strip.cutSize[0]).toBeCloseTo(600 + 30, 6);
    expect(strip.cutSize[1]).toBeCloseTo(80 + 30, 6);
  });

  // Weisstein, "Conical Frustum", MathWorld: the side unrolls to a sector of radius R s / (R - r),
  // s = √((R - r)² + h²). Base 400, top 160, height 160: s = 200, radii 333.3 and 133.3.
  test.each([
    { end: "underside", radii: [1000 / 3, 1000 / 3 - 40], free: "shorter" },
    { end: "top", radii: [400 / 3, 400 / 3 + 40], free: "longer" },
  ] as const)("of a taper is cut like the taper beside its $end, and lined", (row) => {
    const { cover } = makeCover([frustum("f", 400, 160, 160)], {
      ...tape,
      open: [{ kind: "between", faces: [`f/${row.end}`, "f/around"], length: 300 }],
    });
    const pass = cover.passes.find(({ state }) => state === "closing")!;
    expect(placeUnderlap(pass, cover)).toMatchObject({ shape: "ring", freeEdge: row.free });
    const strip = pieceNamed(cover, "underlap strip");
    expect(strip.cut).toBe(2);
    const arcs = arcsOf(strip.finished.outer);
    expect(arcs.map(arcRadius).toSorted((a, b) => a - b)).toEqual(
      row.radii.toSorted((a, b) => a - b).map((radius) => expect.closeTo(radius, 6)),
    );
    const sewn = arcs.find((arc) => Math.abs(arcRadius(arc) - row.radii[0]) < 1)!;
    expect(Math.abs(arcSweep(sewn)) * arcRadius(sewn)).toBeCloseTo(300, 6);
  });

  test("of a pad may be sewn to either edge", () => {
    const { cover } = makeCover([box("b", [700, 400, 80])], {
      ...tape,
      panels: "plain",
      ...between("b/back", "b/underside"),
    });
    const pass = cover.passes.find(({ state }) => state === "closing")!;
    expect(placeUnderlap(pass, cover)).toMatchObject({
      on: null,
      shape: "straight",
      isRound: false,
    });
  });
});

test("a wider allowance beside a zip steps straight out where the open run of a circle ends", () => {
  const { cover } = makeCover([cylinder("c", 450, 360)], {
    closing: { kind: "zip", stock: null },
    seamAllowance: 15,
    allowances: { zip: 25, opening: null },
    open: [{ kind: "between", faces: ["c/underside", "c/around"], length: 900 }],
  });
  const { outline, notches } = pieceNamed(cover, "underside");
  // Worked by hand: radius 225, 25 beside the zip and 15 beside the seam.
  for (const arc of arcsOf(outline.outer)) {
    expect([240, 250]).toContainEqual(expect.closeTo(arcRadius(arc), 9));
  }
  const swept = (radius: number) =>
    arcsOf(outline.outer)
      .filter((arc) => Math.abs(arcRadius(arc) - radius) < 1)
      .reduce((sum, arc) => sum + Math.abs(arcSweep(arc)), 0);
  expect(swept(250)).toBeCloseTo(900 / 225, 9);
  expect(swept(240)).toBeCloseTo(2 * Math.PI - 900 / 225, 9);
  const steps = outline.outer.filter(({ kind }) => kind === "line");
  expect(steps.length).toBe(2);
  for (const { from, to } of steps) {
    expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(10, 9);
    // Each step lies on the way out at a notch.
    const isAtNotch = notches.some(({ at, towards }) => {
      const [x, y] = [from[0] - at[0], from[1] - at[1]];
      return Math.abs(Math.cos(towards) * y - Math.sin(towards) * x) < 1e-6;
    });
    expect(isAtNotch).toBe(true);
  }
});
