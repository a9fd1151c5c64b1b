import { describe, expect, test } from "vitest";
import { batchSeams } from "../../lib/steps/batch-seams.ts";
import { findStep, stepNames } from "../../lib/steps/find-step.ts";
import { joinBoxing } from "../../lib/steps/join-boxing.ts";
import type { Seam } from "../../lib/seams/types.ts";
import { makeCover, makePanel, makeSeam, makeWork } from "../fixtures/plans/make.ts";

const strips = ["P1", "P2", "P3", "P4", "P5", "P6"];
const join = (id: string, order: number, more: Partial<Seam> = {}) =>
  makeSeam({
    id,
    order,
    panels: [strips[order - 1] ?? "P1", strips[order] ?? "P6"],
    length: [70, 70],
    ...more,
  });
const coverOf = (seams: readonly Seam[]) =>
  makeCover({
    solid: "pad",
    seams,
    panels: strips.map((id) => makePanel({ id, size: [500, 70] })),
  });
const idsOf = (seams: readonly Seam[], cover = coverOf(seams)) =>
  batchSeams(seams, cover).map((batch) => batch.map(({ id }) => id).join(""));

// Common practice, no source: the short ends of boxing strips are joined one after the other.
describe("seams sewn in one step", () => {
  test("short joins of strips go together, at most four", () => {
    const seams = ["A", "B", "C", "D", "E"].map((id, index) => join(id, index + 1));
    expect(idsOf(seams)).toEqual(["ABCD", "E"]);
  });

  test.each([
    ["a corner to pivot at", { corners: [{ along: 30, clip: null, turn: 1.57 }] }],
    ["piping", { isPiped: true }],
    ["a ring", { isRing: true }],
    ["easing", { length: [70, 72] as const }],
    ["a long edge", { length: [500, 500] as const }],
    ["another length", { length: [60, 60] as const }],
  ])("%s keeps a seam by itself", (_, more) => {
    expect(idsOf([join("A", 1), join("B", 2, more), join("C", 3)])).toEqual(["A", "B", "C"]);
  });

  test("an author finds the shared step by the letter of any of its seams", () => {
    const seams = [join("A", 1), join("AB", 2)];
    const cover = coverOf(seams);
    const step = joinBoxing([seams[0]!, seams[1]!], cover, {
      group: "Sewing",
      work: makeWork({ covers: [cover] }),
    });
    expect(step.id).toBe("sew-pad-A-AB");
    for (const name of ["sew-pad-A", "sew-pad-AB", "sew-pad-A-AB"])
      expect(findStep(name, [step])).toBe(step.id);
    expect(findStep("sew-pad-B", [step])).toBeNull();
    expect(stepNames([step])).toEqual(["sew", "sew-pad-A-AB", "sew-pad-A", "sew-pad-AB"]);
  });
});
