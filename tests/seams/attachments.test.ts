import { describe, expect, test } from "vitest";
import { rectangleLoop } from "../../lib/plane/rectangle.ts";
import type { Attachment, PieceSpec } from "../../lib/project/types.ts";
import { proveSewing } from "../../lib/seams/build-cover.ts";
import { box, prism } from "../fixtures/blocks.ts";
import { tryCover } from "../fixtures/make-cover.ts";

const strip = (width: number, height: number): PieceSpec => ({
  id: "handle",
  label: "handle",
  stock: "cloth",
  outline: { outer: rectangleLoop(width, height), holes: [] },
  size: [width, height],
  cut: 1,
  seamAllowance: 10,
  up: "none",
  at: null,
  along: null,
  thin: null,
});
const grip = (on: string, at: Attachment["at"] = ["centre", "centre"]): Attachment => ({
  id: "grip",
  piece: "handle",
  on,
  at,
});
const sides = ["top", "underside", "front", "right", "back", "left"].map((side) => `b/${side}`);
const apart = sides.map((face) => ({ name: face, faces: [face] }));
const withGrip = (attachment: Attachment, piece: PieceSpec) =>
  tryCover(
    [box("b", [500, 400, 80])],
    { panels: apart, attach: [attachment] },
    { pieces: [piece] },
  );
const marksOf = ({ cover }: ReturnType<typeof withGrip>) =>
  cover!.pieces.flatMap(({ label, marks }) => marks.map(({ kind, at }) => ({ label, kind, at })));

describe("a handle", () => {
  // Worked by hand on a pad of 500 by 400 by 80; a handle of 240 by 30.
  test("is marked at its middle and both ends, the longer way", () => {
    expect(marksOf(withGrip(grip("b/top"), strip(240, 30)))).toEqual([
      { label: "b/top", kind: "middle", at: [250, 200] },
      { label: "b/top", kind: "end", at: [130, 200] },
      { label: "b/top", kind: "end", at: [370, 200] },
    ]);
    expect(marksOf(withGrip(grip("b/top"), strip(30, 240))).map(({ at }) => at[1])).toEqual([
      200, 80, 320,
    ]);
  });

  test("across a seam is marked on both panels and sewn on once they are joined", () => {
    // The middle 40 before the edge, half the handle 110: its end lies 70 down the back.
    const made = withGrip(grip("b/top", [250, 360]), strip(30, 220));
    const marks = marksOf(made);
    expect(marks.filter(({ label }) => label === "b/top").map(({ at }) => at[1])).toEqual([
      360, 250,
    ]);
    const [end] = marks.filter(({ label }) => label === "b/back");
    // On the back, 80 high with its top upward, it stands 70 below the edge.
    expect(end!.at[1]).toBeCloseTo(80 - 70, 6);
    expect(end!.at[0]).toBeCloseTo(250, 6);
    const [sewnOn] = made.cover!.attached;
    expect(sewnOn!.panels.length).toBe(2);
    expect(sewnOn!.after).toBeGreaterThan(0);
    expect(made.cover!.sewable.faults).toEqual([]);
  });

  test("is refused by the replay too early, too late, and where it lies nowhere", () => {
    const { cover } = withGrip(grip("b/top", [250, 360]), strip(30, 220));
    const { panels, seams, passes, attached } = cover!;
    const prove = (after: number, on = attached[0]!.panels) =>
      proveSewing(panels, seams, passes, [{ id: "grip", panels: on, after }]).faults.join();
    expect(prove(attached[0]!.after)).toBe("");
    expect(prove(0)).toMatch(/do not hang together/);
    expect(prove(passes.length, [panels[0]!.id])).toMatch(/no longer lies by itself/);
    expect(prove(0, [])).toMatch(/lies on no panel/);
  });

  test("is refused by the replay where the work is closed up", () => {
    const { cover } = tryCover(
      [box("b", [500, 400, 80])],
      { panels: apart, attach: [grip("b/top", [250, 360])], closing: { kind: "zip", stock: null } },
      { pieces: [strip(30, 220)] },
    );
    const { panels, seams, passes, attached } = cover!;
    const last = [{ ...attached[0]!, after: passes.length }];
    expect(proveSewing(panels, seams, passes, last).faults.join()).toMatch(/closed up/);
  });

  test("that reaches past the next face is said to be lost", () => {
    const { cover } = withGrip(grip("b/top", [250, 360]), strip(30, 300));
    expect(cover!.lost.map(({ field }) => field)).toEqual(["attach.grip"]);
  });

  test("beside its face, or where the face is cut out, is a fault at its line", () => {
    const beside = withGrip(grip("b/top", [600, 10]), strip(240, 30));
    expect(beside.faults.map(({ field }) => field)).toEqual(["solids.form.cover.attach.grip.at"]);
    const notch = [
      [0, 0],
      [300, 0],
      [300, 300],
      [200, 300],
      [200, 100],
      [100, 100],
      [100, 300],
      [0, 300],
    ] as const;
    const cutOut = tryCover(
      [prism("b", notch, 80)],
      { attach: [grip("b/top", ["centre", 200])] },
      { pieces: [strip(50, 20)] },
    );
    expect(cutOut.faults.map(({ field }) => field)).toEqual(["solids.form.cover.attach.grip.at"]);
  });
});
