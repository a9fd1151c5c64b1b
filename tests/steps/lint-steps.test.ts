import { describe, expect, test } from "vitest";
import { groupSeams } from "../../lib/steps/group-seams.ts";
import { lintSteps } from "../../lib/steps/lint-steps.ts";
import { makeStep, type StepGiven } from "../../lib/steps/make-step.ts";
import { splitGroups } from "../../lib/steps/split-groups.ts";
import { makeCover, makeSeam } from "../fixtures/plans/make.ts";

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

describe("grouping seams", () => {
  const chain = (count: number, makes: (index: number) => string) =>
    makeCover({
      solid: "seat",
      seams: Array.from({ length: count }, (_, index) =>
        makeSeam({
          id: `S${index}`,
          panels: [`P${index}`, `P${index + 1}`],
          order: index + 1,
          makes: makes(index),
        }),
      ),
    });

  test("no group has more than nine seams and none is lost", () => {
    const groups = groupSeams(chain(23, () => "the cover"));
    expect(Math.max(...groups.map(({ seams }) => seams.length))).toBeLessThanOrEqual(9);
    expect(groups.flatMap(({ seams }) => seams).map(({ order }) => order)).toEqual(
      Array.from({ length: 23 }, (_, index) => index + 1),
    );
  });

  test("a new name starts a new group once the old one has five seams", () => {
    expect(
      groupSeams(chain(8, (index) => (index < 5 ? "the frame" : "the cover"))).map(
        ({ makes }) => makes,
      ),
    ).toEqual(["the frame", "the cover"]);
    expect(
      groupSeams(chain(4, (index) => (index < 1 ? "the frame" : "the cover"))).map(
        ({ makes }) => makes,
      ),
    ).toEqual(["the cover"]);
  });

  test("panels that have nothing to do with each other start a new group", () => {
    const cover = makeCover({
      solid: "seat",
      seams: [
        makeSeam({ id: "A", panels: ["P1", "P2"], order: 1 }),
        makeSeam({ id: "B", panels: ["P3", "P4"], order: 2 }),
      ],
    });
    expect(groupSeams(cover)).toHaveLength(2);
  });
});
