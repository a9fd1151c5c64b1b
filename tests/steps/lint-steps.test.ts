import { describe, expect, test } from "vitest";
import { groupPasses } from "../../lib/steps/group-passes.ts";
import { lintSteps } from "../../lib/steps/lint-steps.ts";
import { makeStep, type StepGiven } from "../../lib/steps/make-step.ts";
import { splitGroups } from "../../lib/steps/split-groups.ts";
import { makeCover } from "../fixtures/plans/make.ts";

const step = (more: Partial<StepGiven> = {}) =>
  makeStep({
    id: "one",
    group: "Sewing",
    title: "One",
    actions: ["Sew seam A."],
    uses: ["panel P1"],
    makes: ["seam A"],
    ...more,
  });
const lint = (...steps: Parameters<typeof lintSteps>[0]) => lintSteps(steps, ["panel P1"]);

const long = `Sew ${"very ".repeat(18)}slowly on.`;
const broken: readonly (readonly [string, Partial<StepGiven>, RegExp])[] = [
  ["more than twenty words", { actions: [long] }, /21 words/],
  ["a sentence that does not command", { actions: ["The seam is sewn."] }, /known verb/],
  ["two actions joined by a semicolon", { actions: ["Sew here; press there."] }, /two actions/],
  ["two actions joined by and", { actions: ["Sew the edge and press it."] }, /two actions/],
  ["a part that nothing has made", { uses: ["panel P9"] }, /panel P9, which nothing has made/],
  ["a missing full stop", { actions: ["Sew seam A"] }, /full stop/],
];

describe("the rules for steps", () => {
  test("let a plain step pass", () => {
    expect(lint(step())).toEqual([]);
  });

  test("exactly twenty words pass", () => {
    expect(lint(step({ actions: [long.replace("very ", "")] }))).toEqual([]);
  });

  test.each(broken)("catch %s", (_, more, rule) => {
    expect(lint(step(more)).join("\n")).toMatch(rule);
  });

  test("catch a tool that the step names but does not use", () => {
    expect(
      lint(
        step({ actions: ["Press seam A with the iron."] }),
        step({ id: "two", uses: ["iron"], actions: ["Press it."] }),
      ).join(),
    ).toMatch(/names iron, which it does not use/);
  });

  test("catch a tool used without its caution", () => {
    expect(lint({ ...step({ uses: ["panel P1", "iron"] }), cautions: [] }).join()).toMatch(
      /iron without the caution iron/,
    );
  });

  test("catch an id used twice and a group of ten", () => {
    expect(lint(step(), step()).join()).toMatch(/one: used twice/);
    const ten = Array.from({ length: 10 }, (_, index) => step({ id: `s${index}` }));
    expect(lint(...ten).join()).toMatch(/10 steps in one group/);
    expect(lint(...splitGroups(ten))).toEqual([]);
    expect(splitGroups(ten).map(({ group }) => group)).toEqual([
      ...Array<string>(5).fill("Sewing, part 1"),
      ...Array<string>(5).fill("Sewing, part 2"),
    ]);
  });
});

describe("grouping the passes of the needle", () => {
  const chain = (count: number, panels: (index: number) => readonly string[]) =>
    makeCover({
      solid: "seat",
      passes: Array.from({ length: count }, (_, index) => ({
        number: index + 1,
        seams: [`S${index}`],
        edges: [],
        state: "sewn" as const,
        isRing: false,
        corners: [],
        length: 100,
        joins: ["a", "b"] as const,
        makes: `part ${index}`,
        panels: panels(index),
      })),
    });

  test("no group has more than nine and none is lost", () => {
    const groups = groupPasses(chain(23, () => ["P1"]));
    expect(Math.max(...groups.map(({ passes }) => passes.length))).toBeLessThanOrEqual(9);
    expect(groups.flatMap(({ passes }) => passes).map(({ number }) => number)).toEqual(
      Array.from({ length: 23 }, (_, index) => index + 1),
    );
  });

  test("panels that have nothing to do with each other start a new group, named by what it makes", () => {
    const groups = groupPasses(chain(8, (index) => (index < 4 ? ["P1", "P2"] : ["P3", "P4"])));
    expect(groups.map(({ makes }) => makes)).toEqual(["part 3", "part 7"]);
  });

  test("a group of one or two goes with the next", () => {
    const groups = groupPasses(chain(6, (index) => (index < 2 ? ["P1", "P2"] : ["P3", "P4"])));
    expect(groups).toHaveLength(1);
  });
});
