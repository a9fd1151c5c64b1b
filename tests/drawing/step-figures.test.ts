import { readFileSync } from "node:fs";
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
        expect(alt).toContain(`Seam ${letter},`);
      }
    }
  });
});
