import { describe, expect, test } from "vitest";
import { lintSteps } from "../../lib/steps/lint-steps.ts";
import { findStep } from "../../lib/steps/find-step.ts";
import { listStepFaults } from "../../lib/steps/list-step-faults.ts";
import { listComputedSteps, listSteps } from "../../lib/steps/list-steps.ts";
import { listSupplied } from "../../lib/steps/list-supplied.ts";
import { listTools } from "../../lib/steps/list-tools.ts";
import type { Work } from "../../lib/estimate/types.ts";
import safety from "../../shared/safety/cautions.json" with { type: "json" };
import tools from "../../shared/tables/tools.json" with { type: "json" };
import { benchPad } from "../fixtures/plans/bench-pad.ts";
import { cornerSeat } from "../fixtures/plans/corner-seat.ts";
import { makeWork } from "../fixtures/plans/make.ts";
import { toyCrate } from "../fixtures/plans/toy-crate.ts";
import {
  everyFixture,
  withAnchor,
  withClosing,
  withLongOpening,
} from "../fixtures/plans/variants.ts";

const idsOf = (work: Work) => listSteps(work).map(({ id }) => id);
const stepOf = (work: Work, id: string) => {
  const steps = listSteps(work);
  const found = findStep(id, steps);
  const step = steps.find((one) => one.id === found);
  if (step === undefined) throw new Error(`no step ${id}`);
  return step;
};
/** What to do when a seam fails its check stands once, in the method. */
const isOneSeam = (id: string) => id.startsWith("sew-") && id !== "sew-method";
const textOf = (work: Work, id: string) => stepOf(work, id).actions.join(" ");

describe("the steps of the making", () => {
  // ASD-STE100: a procedure commands, one instruction a sentence, at most 20 words. ANSI Z535.6: the
  // caution stands before the action. Novick and Morse 2000: few steps to a group.
  test.each(everyFixture)("keep every rule for %s", (_, work) => {
    expect(lintSteps(listSteps(work), listSupplied(work))).toEqual([]);
  });

  test.each(everyFixture)("leave no hole in titles, checks and remedies of %s", (_, work) => {
    for (const { title, check, remedy, cautions } of listSteps(work)) {
      for (const text of [
        title,
        check ?? "",
        remedy ?? "",
        ...cautions.map(({ avoid }) => avoid),
      ]) {
        expect(text).not.toMatch(/undefined|NaN|Infinity|null|\s{2}/);
      }
    }
  });

  test.each(everyFixture)("give every check of %s a remedy", (_, work) => {
    for (const { id, check, remedy } of listSteps(work))
      if (check !== null && !isOneSeam(id)) expect(remedy).not.toBeNull();
  });

  test.each(everyFixture)("say how a seam is sewn before the first seam of %s", (_, work) => {
    const ids = idsOf(work);
    const first = ids.findIndex(isOneSeam);
    if (first >= 0) expect(ids.indexOf("sew-method")).toBeLessThan(first);
    expect(ids.filter((id) => id === "sew-method")).toHaveLength(first < 0 ? 0 : 1);
  });

  test("run from the material to the care of the cover", () => {
    expect(idsOf(cornerSeat())).toEqual([
      "check-stock",
      "cut-block-foam-1",
      "cut-block-foam-2",
      "glue-seat",
      "spread-rockets",
      "cut-seat-P1",
      "cut-seat-P2",
      "cut-seat-P4",
      "mark-seat",
      "sew-method",
      "sew-seat-A",
      "sew-seat-B",
      "sew-seat-C",
      "sew-seat-D",
      "sew-seat-E",
      "sew-seat-F",
      "insert-seat",
      "close-seat",
      "anchor-seat",
      "care-seat",
    ]);
  });

  test("sew in the order of the seams and leave open ones alone", () => {
    const sewn = idsOf(cornerSeat()).filter(isOneSeam);
    const ordered = cornerSeat()
      .covers[0]?.seams.filter(({ state }) => state === "sewn")
      .toSorted((one, other) => one.order - other.order);
    expect(sewn).toEqual(ordered?.map(({ id }) => `sew-seat-${id}`));
  });

  test("name each sub-assembly", () => {
    const groups = [...new Set(listSteps(cornerSeat()).map(({ group }) => group))];
    expect(groups).toEqual(["Checking", "Foam", "Cutting", "Sewing: the cover", "Fitting", "Care"]);
  });

  test("say that left and right are mirrored where the second one is cut", () => {
    expect(textOf(cornerSeat(), "cut-seat-P3")).toContain(
      "Compare the figure of panel P3 with panel P2",
    );
    expect(stepOf(cornerSeat(), "cut-seat-P3").cautions.map(({ id }) => id)).toContain("mirrored");
    expect(stepOf(cornerSeat(), "cut-seat-P4").cautions.map(({ id }) => id)).not.toContain(
      "mirrored",
    );
  });

  test("clip and pivot at the inward corner, at its distance from the start", () => {
    const text = textOf(cornerSeat(), "sew-seat-A");
    expect(text).toContain("Clip the corner of panel P2");
    expect(text).toContain("Pivot 18 in from the start");
    expect(textOf(cornerSeat(), "sew-seat-C")).not.toMatch(/clip|Pivot/);
  });

  test("measure each seam against its length", () => {
    expect(stepOf(benchPad(), "sew-pad-C").check).toContain("120 cm");
    expect(stepOf(cornerSeat(), "sew-seat-A").check).toContain("42 in");
  });

  test("sew on attachments before any seam, and piping before the seams it lies in", () => {
    const ids = idsOf(benchPad());
    const firstSeam = ids.findIndex((id) => id.startsWith("sew-"));
    expect(ids.indexOf("attach-pad-handle")).toBeGreaterThan(ids.indexOf("make-handle"));
    expect(ids.indexOf("attach-pad-handle")).toBeLessThan(firstSeam);
    expect(ids.indexOf("pipe-pad")).toBeLessThan(firstSeam);
  });

  test("put the zip in where the order of sewing has it", () => {
    const flat = idsOf(benchPad());
    expect(flat.indexOf("zip-pad")).toBeLessThan(flat.findIndex(isOneSeam));
    const long = idsOf(withLongOpening(benchPad()));
    expect(long.indexOf("zip-pad")).toBeGreaterThan(long.findLastIndex(isOneSeam));
  });

  test.each([
    ["zip", "zip-pad", "Close the zip"],
    ["hook-and-loop", "tape-pad", "Press the tapes"],
    ["ties", "ties-pad", "Tie the ties"],
  ] as const)("close a %s by its own steps", (kind, id, words) => {
    expect(idsOf(withClosing(benchPad(), kind))).toContain(id);
    expect(textOf(withClosing(benchPad(), kind), "close-pad")).toContain(words);
  });

  test.each([
    ["pad", "loose pad"],
    ["tacks", "Tack"],
    ["seam", "seam"],
  ] as const)("anchor an inward corner by %s", (anchor, words) => {
    expect(stepOf(withAnchor(cornerSeat(), anchor), "anchor-seat").title).toContain(words);
  });

  test("say by how much the foam is squeezed, and only when it is", () => {
    expect(textOf(cornerSeat(), "insert-seat")).toContain("10 %");
    expect(textOf(benchPad(), "insert-pad")).not.toContain("%");
  });

  test("caution before a heavy lift", () => {
    const heavy = {
      ...benchPad(),
      solids: benchPad().solids.map((solid) => ({ ...solid, mass: 20 })),
    };
    expect(stepOf(heavy, "insert-pad").cautions.map(({ id }) => id)).toContain("heavy-lift");
    expect(stepOf(benchPad(), "insert-pad").cautions).toEqual([]);
  });

  test("an empty project has no steps", () => {
    expect(listSteps(makeWork())).toEqual([]);
  });
});

describe("cautions", () => {
  test.each(Object.entries(safety.cautions))(
    "%s has its four parts and commands",
    (_, { severity, hazard, consequence, avoid, source }) => {
      expect(["danger", "warning", "caution", "note"]).toContain(severity);
      for (const text of [hazard, consequence, avoid]) expect(text).toMatch(/^[A-Z].*\.$/);
      expect(avoid).toMatch(/^(Keep|Work|Try|Close|Wear|Clamp|Lift|Compare)\b/);
      expect(source.length).toBeGreaterThan(10);
    },
  );

  test("every caution a tool names exists", () => {
    for (const { caution } of tools.rows)
      if (caution !== null) expect(Object.keys(safety.cautions)).toContain(caution);
  });

  test("the graver come first", () => {
    const severities = stepOf(cornerSeat(), "cut-seat-P3").cautions.map(({ severity }) => severity);
    expect(severities).toEqual(["caution", "note"]);
  });
});

describe("the author's words in the steps", () => {
  test("a note is added to the step it names and an own step stands before it", () => {
    const crate = toyCrate();
    const words = crate.project.words.map((part) =>
      part.kind === "before" ? { ...part, step: "assemble" } : part,
    );
    const steps = listSteps({ ...crate, project: { ...crate.project, words } });
    expect(steps.find(({ id }) => id === "sand")?.notes).toEqual(["Go over the hand holes twice."]);
    const own = steps.findIndex(({ id }) => id === "own-1");
    expect(steps[own]).toMatchObject({
      title: "Put the crate together",
      notes: ["Screw the rails under the lid."],
    });
    expect(steps[own + 1]?.id).toBe("assemble");
  });

  test("an unknown step is a fault at its line that lists those that exist", () => {
    const crate = toyCrate();
    const faults = listStepFaults(crate.project, listComputedSteps(crate));
    expect(faults).toHaveLength(1);
    expect(faults[0]?.fault).toContain('line 40: there is no step "finish"');
    expect(faults[0]?.fix).toContain("sand, assemble");
  });
});

describe("the list of tools", () => {
  test("holds what the steps use, once, and no parts", () => {
    const list = listTools(listSteps(cornerSeat()));
    expect(list).toContain("electric knife");
    expect(list).not.toContain("drill");
    expect(list).not.toContain("panel P1");
    expect(new Set(list).size).toBe(list.length);
    expect(listTools(listSteps(toyCrate()))).toContain("drill");
  });
});
