import { describe, expect, test } from "vitest";
import { hemStitch } from "../../lib/seams/hem-stitch.ts";
import { makeLoosePiece } from "../../lib/seams/make-pieces.ts";
import { facingSide } from "../../lib/project/facing-side.ts";
import { readProjects } from "../../lib/project/read-projects.ts";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { polygonLoop } from "../../lib/project/make-shape.ts";

const readPiece = (piece: string) =>
  readProjects([
    {
      file: "content/cloth.md",
      text: [
        "---",
        "title: Cloth",
        "units: cm",
        "summary: A cloth.",
        "stock:",
        "  print: {kind: fabric, width: 140}",
        "  ply: {kind: sheet, size: [100, 60], thickness: 6 mm}",
        "pieces:",
        `  cloth: ${piece}`,
        "---",
        "",
      ].join("\n"),
    },
  ]);

const planOf = (piece: string) => {
  const { projects, faults } = readPiece(piece);
  expect(faults).toEqual([]);
  return computePlan(projects[0]!);
};

describe("hems of their own on the sides of a loose piece", () => {
  // Worked by hand, in cm: 60 + 1 + 1 across, 80 + 4 + 2.5 high.
  const plan = () =>
    planOf("{stock: print, size: [60, 80], seamAllowance: 1, hem: {top: 4, bottom: 2.5}}");

  test("are added side by side to what is cut", () => {
    const [piece] = plan().pieces;
    expect(piece!.cutSize[0]).toBeCloseTo(620, 9);
    expect(piece!.cutSize[1]).toBeCloseTo(865, 9);
    expect(piece!.area).toBeCloseTo(620 * 865, 6);
    expect(piece!.edges.map(({ allowance }) => allowance)).toEqual([25, 10, 40, 10]);
  });

  test("are named in the step, the narrow ones first, and sewn near the inner fold where deep", () => {
    const step = plan().steps.find(({ id }) => id === "make-cloth")!;
    expect(step.actions).toEqual([
      "Turn in 1 cm along the left and right edges of the cloth, wrong sides together.",
      "Turn in 2.5 cm along the bottom edge.",
      "Turn in 4 cm along the top edge.",
      "Fold 1 cm of the raw edge under along the top and bottom edges.",
      "Press the folds with the iron.",
      "Sew along the narrow hems with the sewing machine, a foot's width in.",
      "Sew each deep hem with the sewing machine, close to its inner fold.",
    ]);
  });

  test("leave a side raw that has none", () => {
    const { pieces, steps } = planOf(
      "{stock: print, size: [60, 80], seamAllowance: 0, hem: {bottom: 1}}",
    );
    expect(pieces[0]!.cutSize[1]).toBeCloseTo(810, 9);
    expect(steps.find(({ id }) => id === "make-cloth")!.actions).toContain(
      "Turn in 1 cm along the bottom edge of the cloth, wrong sides together.",
    );
  });

  test.each([
    {
      piece: "{stock: print, outline: {circle: 40}, hem: {top: 4}}",
      fault: "names a side without a straight edge",
    },
    { piece: "{stock: ply, size: [20, 20], hem: {top: 4}}", fault: "is not for a sheet" },
    { piece: "{stock: print, size: [20, 20], hem: {front: 4}}", fault: "front" },
  ])("are refused where they make no sense: $piece", ({ piece, fault }) => {
    const { faults } = readPiece(piece);
    expect(faults.map(({ message }) => message).join("\n")).toContain(fault);
  });

  test("follow the slanted sides of an outline", () => {
    const loop = polygonLoop([
      [0, 0],
      [100, 0],
      [80, 60],
      [20, 60],
    ]);
    expect(loop.map(facingSide)).toEqual(["bottom", "right", "top", "left"]);
    const cloth = { shrink: 0, direction: "any", id: "print" } as Parameters<
      typeof makeLoosePiece
    >[1];
    const { outline } = makeLoosePiece(
      {
        id: "apron",
        label: "apron",
        stock: "print",
        outline: { outer: loop, holes: [] },
        size: [100, 60],
        cut: 1,
        seamAllowance: 10,
        hem: { top: 30 },
        up: "up",
        at: null,
        along: null,
        thin: null,
      },
      cloth,
    );
    const highest = Math.max(...outline.outer.map(({ from: [, y] }) => y));
    const lowest = Math.min(...outline.outer.map(({ from: [, y] }) => y));
    expect(lowest).toBeCloseTo(-10, 9);
    expect(highest).toBeCloseTo(90, 9);
  });

  test("are stitched a foot's width in, or at the fold of the raw edge", () => {
    expect(hemStitch(10)).toBe(6.35);
    expect(hemStitch(40)).toBe(28);
    expect(hemStitch(0)).toBe(0);
  });
});
