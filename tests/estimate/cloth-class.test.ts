import { describe, expect, test } from "vitest";
import {
  bastingStitch,
  clothClass,
  layerThickness,
  stitchFor,
  usualStitch,
} from "../../lib/estimate/cloth-class.ts";
import { fibreCare } from "../../lib/estimate/fibre-care.ts";
import { seamStrength } from "../../lib/estimate/seam-strength.ts";
import { stitchesPerInch } from "../../lib/estimate/stitches-per-inch.ts";
import { threadRatioByThickness } from "../../lib/estimate/thread-ratio.ts";
import { fibres } from "../../lib/project/stock-types.ts";
import * as make from "../fixtures/plans/make.ts";

const workOf = (weight: number | null) =>
  make.makeWork({
    project: { stock: [make.makeFabric({ weight })] },
    covers: [make.makeCover({ solid: "seat" })],
  });

describe("stitch, needle and thread by the weight of the cloth", () => {
  // Nancy's Notions, https://nancysnotions.com/stitch-length-doesnt-have-to-be-confusing/: light 2 to 2.5 mm,
  // medium 2.5 to 3, canvas and heavy 3 to 4
  test.each([
    [100, 2, 2.5],
    [200, 2.5, 3],
    [300, 3, 4],
    [700, 3, 4],
  ])("cloth of %d g/m² is sewn at %d to %d mm", (weight, least, most) => {
    const stitch = stitchFor(workOf(weight));
    expect(stitch).toBeGreaterThanOrEqual(least);
    expect(stitch).toBeLessThanOrEqual(most);
  });

  // Standard seams 2.5 to 3.0 mm, neasesneedlework.com and melgeecrafts.com
  test("cloth of unknown weight is sewn by the usual stitch, within the band of a standard seam", () => {
    expect(stitchFor(workOf(null))).toBe(usualStitch);
    expect(usualStitch).toBeGreaterThanOrEqual(2.5);
    expect(usualStitch).toBeLessThanOrEqual(3);
  });

  // neasesneedlework.com and melgeecrafts.com: basting 4 to 5 mm (one of them 5 to 7), topstitching 3.0 to 3.5 mm
  test("basting and the usual stitch on top of the cloth keep the published bands", () => {
    const [least, most] = bastingStitch;
    expect(least).toBeGreaterThanOrEqual(4);
    expect(most).toBeLessThanOrEqual(7);
    expect(usualStitch).toBeGreaterThanOrEqual(3);
    expect(usualStitch).toBeLessThanOrEqual(3.5);
  });

  // Janome, thread and needle chart, https://www.easymanua.ls/janome/415/manual?p=9: furnishing cloth US 14 to 16;
  // leatherworker.net (Wizcrafts 2021): thread #69 takes needle 18
  test.each([
    [300, "14 to 16"],
    [700, "US 18"],
  ])("cloth of %d g/m² takes needle %s", (weight, needle) => {
    expect(clothClass(weight)?.needle).toContain(needle);
  });

  // http://piecefulkwilter.blogspot.com/2009/05/taking-out-math-3.html, rounded down (its 0.1 is a slip for 1.0)
  test.each([
    [1, 25],
    [1.5, 16],
    [2, 12],
    [2.5, 10],
    [3, 8],
    [3.5, 7],
    [4, 6],
    [4.5, 5],
    [5, 5],
  ])("a stitch of %d mm is %d whole ones to the inch", (stitch, perInch) => {
    expect(Math.floor(stitchesPerInch(stitch))).toBe(perInch);
  });

  // A&E, stitches to the inch × thread strength × 1.5 for lockstitch in woven cloth, quoted at
  // https://fineleatherworking.com/blog/how-many-stitches-per-inch-leather
  test("ten stitches to the inch of a 4 lb thread hold 60 lb an inch", () => {
    expect(seamStrength(2.54, 4)).toBeCloseTo(60, 9);
  });

  // 25 lb an inch asked of seams in furnishing cloth, and the threads' strength: both from memory, so advice
  test.each([100, 200, 300, 700])(
    "cloth of %d g/m² is given thread whose seam holds 25 lb",
    (weight) => {
      const strength = clothClass(weight)?.threadStrength ?? 0;
      expect(seamStrength(stitchFor(workOf(weight)), strength) / 4.448).toBeGreaterThan(25);
    },
  );

  // 301: C = 2 + 2 T S, https://www.textilecalculations.com/calculate-amount-of-sewing-thread-consumption/;
  // two plies of heavy cloth, 3 mm at 8 to the inch, worked by hand: 3.9
  test("a thick seam takes far more than the flat ratio", () => {
    expect(threadRatioByThickness("301", { thickness: 3, stitch: 25.4 / 8 })).toBeCloseTo(3.9, 1);
  });

  test("thickness is as given, or follows from the weight", () => {
    expect(layerThickness(make.makeFabric({ thickness: 0.9, weight: 300 }))).toBe(0.9);
    // Common practice: canvas of 400 g/m² is about 0.8 mm thick.
    expect(layerThickness(make.makeFabric({ weight: 400 }))).toBeCloseTo(0.8, 9);
    expect(layerThickness(make.makeFabric())).toBeNull();
  });
});

describe("care by fibre", () => {
  test.each(fibres)("%s is washed, dried and ironed in words", (fibre) => {
    const care = fibreCare(make.makeFabric({ fibre }));
    for (const words of [care?.wash, care?.dry, care?.iron]) expect(words).toMatch(/^[A-Z].*\.$/);
  });

  // https://fabricandfibres.com/fabric-care: wool shrinks in warm water, polyester melts under a hot iron
  test("wool is washed cold and polyester ironed cool", () => {
    expect(fibreCare(make.makeFabric({ fibre: "wool" }))?.wash).toMatch(/cold/);
    expect(fibreCare(make.makeFabric({ fibre: "polyester" }))?.iron).toMatch(/cool.*melts/);
  });
});
