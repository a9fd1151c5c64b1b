import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseStepFigure } from "../../lib/booklet/choose-step-figure.ts";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { planJson } from "../../lib/booklet/plan-json.ts";
import { drawFigure, listFigures } from "../../lib/drawing/index.ts";
import type { DrawingInput } from "../../lib/drawing/types.ts";
import { readProject } from "../../lib/project/read-project.ts";
import { listComputedSteps } from "../../lib/steps/list-steps.ts";
import type { Step } from "../../lib/steps/types.ts";
import { everyFixture } from "../fixtures/plans/variants.ts";

const files = [
  ...["batten-crate", "bay-window-pad", "library-corner-seat", "round-pouf"].map(
    (name) => `content/${name}.md`,
  ),
  ...["batten-crate", "bay-pad", "contract-example", "round-pouf", "seat-block"].map(
    (name) => `tests/fixtures/projects/${name}.md`,
  ),
];
const plans = files.flatMap((file) => {
  const { projects } = readProject({ file, text: readFileSync(file, "utf8") });
  return projects.map((project) => ({ name: project.slug, file, plan: computePlan(project) }));
});

/** Cut plans and forms are drawn, and tested, as figures of pages of their own. */
const hasPage = /^(slab|sheet|board|glue|opening|pieces)\//;

/** The steps of the author's own are the only ones that may go without. */
const isComputed = ({ id }: Pick<Step, "id">) => !id.startsWith("own-");

const sourceOf = (input: DrawingInput) => ({
  ids: listFigures(input),
  draw: (id: string, room?: { readonly width: number; readonly height: number }) =>
    drawFigure(input, id, room)!,
});

describe("the figure of a step", () => {
  test.each(plans)("is there for every computed step of $file ($name)", ({ plan }) => {
    const source = sourceOf(plan);
    const written = planJson(plan).steps.filter(isComputed);
    expect(written.length).toBeGreaterThan(5);
    for (const { id, figure } of written) expect(source.ids, id).toContain(figure);
    for (const step of plan.steps.filter(isComputed)) {
      if (hasPage.test(step.figure ?? "")) continue;
      const { figure } = chooseStepFigure(step, source);
      expect(figure, step.id).not.toBeNull();
      expect(figure?.id).toBe(step.figure);
      expect(figure?.collisions).toEqual([]);
    }
  });

  // Hand-made plans: every closing, anchor, block and kind of cloth, with forms that are sketched.
  test.each(everyFixture)("is named for every computed step of %s", (_, work) => {
    for (const { id, figure } of listComputedSteps(work)) expect(figure, id).toMatch(/^[a-z-]+\//);
  });

  test("shows every seam of a step that sews several", () => {
    const joined = plans.flatMap(({ plan }) =>
      plan.steps
        .filter(({ figure }) => /^seam\/.*\+/.test(figure ?? ""))
        .map(({ figure }) => ({ plan, figure: figure ?? "" })),
    );
    expect(joined.length).toBeGreaterThan(0);
    for (const { plan, figure } of joined) {
      const letters = figure.split("/")[2]?.split("+") ?? [];
      const { svg = "", alt = "" } = drawFigure(plan, figure) ?? {};
      for (const letter of letters) {
        expect(svg).toContain(`>${letter}</text>`);
        expect(alt).toMatch(new RegExp(`Seams? (?:[A-Z]+, )*${letter},`));
      }
    }
  });

  const pads = fc.record({
    width: fc.integer({ min: 28, max: 110 }),
    depth: fc.integer({ min: 25, max: 58 }),
    thick: fc.integer({ min: 3, max: 24 }),
    units: fc.constantFrom("cm", "in"),
    closing: fc.constantFrom("zip", "hook-and-loop", "ties", "hand-sewn"),
    fit: fc.constantFrom("{smallerBy: 1}", "exact", "{largerBy: 1}"),
    isPiped: fc.boolean(),
    back: fc.constantFrom(null, "pad", "tacks", "seam"),
  });
  test("is clear and whole for pads nobody foresaw", { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(pads, (pad) => {
        const { projects } = readProject({ file: "content/pad.md", text: padText(pad) });
        expect(projects).toHaveLength(1);
        const plan = computePlan(projects[0]!);
        const source = sourceOf(plan);
        for (const step of plan.steps) {
          if (hasPage.test(step.figure ?? "")) continue;
          expect(
            chooseStepFigure(step, source).figure,
            `${step.id} ${JSON.stringify(pad)}`,
          ).not.toBeNull();
        }
      }),
      { numRuns: 8, seed: 5, endOnFailure: true },
    );
  });
});

/** A pad of these sizes, with a low back where one is held down in its corner. */
function padText(pad: {
  readonly width: number;
  readonly depth: number;
  readonly thick: number;
  readonly units: string;
  readonly closing: string;
  readonly fit: string;
  readonly isPiped: boolean;
  readonly back: string | null;
}): string {
  const { width, depth, thick, units, closing, fit, isPiped, back } = pad;
  const by = units === "in" ? 0.4 : 1;
  const cm = (length: number) => Math.max(1, Math.round(length * by));
  return `---
title: Pad
units: ${units}
dimensions: {width: ${cm(width)}, depth: ${cm(depth)}, thick: ${cm(thick)}}
stock:
  foam: {kind: slab, size: [200 cm, 60 cm, 6 cm], density: 35 kg/m3}
  print: {kind: fabric, width: 140 cm, selvedge: 1 cm, direction: one-way}
  zip: {kind: zip, lengths: [40 cm, 60 cm, 150 cm]}
solids:
  pad:
    foam: foam
    blocks:
      block: {box: [width, depth, thick]}
${back === null ? "" : "      rest: {box: [width, 6 cm, 12 cm], at: [0, depth - 6 cm, thick]}"}
    cover:
      fabric: print
      seamAllowance: 1.5 cm
      fit: ${fit}
      panels: plain
      closing: {kind: ${closing}${closing === "zip" ? ", stock: zip" : ""}}
${isPiped ? "      piping: {cord: 5 mm, along: [block/front]}" : ""}
${back === null ? "" : `      anchor: ${back}`}
---
A pad.
`;
}
