import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildRisk } from "../../lib/booklet/build-risk.ts";
import { buildServe } from "../../lib/booklet/build-serve.ts";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import type { Plan } from "../../lib/booklet/types.ts";
import { drawFigure, listFigures } from "../../lib/drawing/index.ts";
import { readProject } from "../../lib/project/read-project.ts";
import { makeFormat } from "../../lib/units/make-format.ts";

const planOf = (name: string, front = ""): Plan => {
  const file = `tests/fixtures/projects/${name}.md`;
  const text = readFileSync(file, "utf8").replace("---\n", `---\n${front}`);
  return computePlan(readProject({ file, text }).projects[0]!);
};
const wood = planOf("batten-crate", "classroom: true\n");
const seat = planOf("seat-block", "classroom: true\n");

// SSERC, risk assessment process, https://www.sserc.org.uk/health-safety/risk-assessment-process: hazard, persons
// exposed, current controls, further action, by whom, by when, done
describe("the template for a risk assessment", () => {
  test("is there for a class only", () => {
    expect(buildRisk(planOf("bay-pad", "classroom: false\n"))).toBeNull();
    expect(buildRisk(seat)?.table.columns.map(({ title }) => title)).toHaveLength(7);
  });

  test.each([
    ["wood", wood],
    ["foam", seat],
  ])(
    "of %s has a row for every caution of the steps, with its controls and its steps",
    (_, plan) => {
      const rows = buildRisk(plan)!.table.rows.map(({ cells }) => cells);
      for (const [index, { cautions }] of plan.steps.entries()) {
        for (const { id, severity, hazard, avoid } of cautions) {
          if (severity === "note") continue;
          const row = rows.find(([first = ""]) => first.startsWith(hazard));
          expect(row?.[2], id).toBe(avoid);
          const numbers = [...(row?.[0] ?? "").matchAll(/(\d+)(?: to (\d+))?/g)].map(
            ([, from, to]) => [Number(from), Number(to ?? from)] as const,
          );
          expect(
            numbers.some(([from, to]) => from <= index + 1 && index + 1 <= to),
            id,
          ).toBe(true);
        }
      }
    },
  );

  test("leaves what only the teacher knows blank", () => {
    for (const { cells } of buildRisk(wood)!.table.rows) {
      expect(cells).toHaveLength(7);
      expect(cells.slice(3)).toEqual(["", "", "", ""]);
      for (const cell of cells.slice(0, 3)) expect(cell.length).toBeGreaterThan(3);
    }
  });
});

describe("the page of size and balance", () => {
  const figuresOf = (plan: Plan) => ({
    ids: listFigures(plan),
    draw: (id: string) => drawFigure(plan, id)!,
  });

  test("shows a seat with its figure, and nothing for a crate", () => {
    const page = buildServe(seat, figuresOf(seat), makeFormat(seat.project));
    expect(page?.parts[0]?.figure?.id).toMatch(/^tipping\//);
    expect(page?.parts[0]?.facts.map(({ label }) => label)).toContain("Tips over, empty");
    expect(buildServe(wood, figuresOf(wood), makeFormat(wood.project))).toBeNull();
  });
});
