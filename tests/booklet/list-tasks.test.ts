import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { listTasks } from "../../lib/booklet/list-tasks.ts";
import type { Task } from "../../lib/booklet/pages.ts";
import { readProjects } from "../../lib/project/read-projects.ts";
import { makeFormat } from "../../lib/units/make-format.ts";

const names = ["batten-crate", "bay-pad", "round-pouf", "seat-block"];
const tasksOf = (name: string, copies = 1): readonly Task[] => {
  const file = `tests/fixtures/projects/${name}.md`;
  const project = readProjects([{ file, text: readFileSync(file, "utf8") }]).projects[0]!;
  const plan = { ...computePlan(project), project: { ...project, copies } };
  return listTasks(plan, makeFormat(project));
};

/** Figures of a line as a pupil reads them: "17 3/4" is 17.75. */
const figuresIn = (text: string): readonly number[] =>
  [...text.matchAll(/(\d+(?:\.\d+)?)(?:\s(\d+)\/(\d+))?(?!\/)|(\d+)\/(\d+)/g)].map(
    ([whole, plain, top, bottom]) =>
      whole.includes("/") && top === undefined
        ? Number(whole.split("/")[0]) / Number(whole.split("/")[1])
        : Number(plain) + (top === undefined ? 0 : Number(top) / Number(bottom)),
  );

// The pupil has the printed words only: the sum of those figures must be the printed answer.
describe.each(names)("the sums of %s, done from the printed words alone", (name) => {
  const tasks = tasksOf(name);

  test("there are some, numbered from 1", () => {
    expect(tasks.length).toBeGreaterThan(0);
    expect(tasks.map(({ number }) => number)).toEqual(tasks.map((_, i) => i + 1));
  });

  test("a cover is its foam and the ease", () => {
    for (const { lines, answer } of tasks.filter(({ ask }) => ask.includes("finished cover"))) {
      const [foam] = figuresIn(lines[0]!);
      const [ease] = figuresIn(lines[1]!);
      const sign = lines[1]!.includes("smaller") ? -1 : 1;
      expect(figuresIn(answer!)[0]).toBeCloseTo(foam! + sign * ease!, 6);
    }
  });

  test("a cut size is the finished size and twice the allowance, and more where the cloth shrinks", () => {
    for (const { lines, answer } of tasks.filter(({ ask }) => ask.includes("cut size"))) {
      const finished = figuresIn(lines[0]!);
      const [allowance] = figuresIn(lines[1]!);
      const shrink = lines[2] === undefined ? 0 : figuresIn(lines[2])[0]! / 100;
      figuresIn(answer!).forEach((cut, i) => {
        const sum = (finished[i]! + 2 * allowance!) * (1 + shrink);
        expect(Math.abs(cut - sum)).toBeLessThan(shrink === 0 ? 1e-6 : 0.51);
      });
    }
  });

  // Euclid, Elements I.47.
  test("a diagonal is the root of the squares", () => {
    for (const { lines, answer } of tasks.filter(({ ask }) => ask.includes("corner to corner"))) {
      const [across, up] = figuresIn(lines[0]!);
      expect(Math.abs(figuresIn(answer!)[0]! - Math.hypot(across!, up!))).toBeLessThan(0.51);
    }
  });
});

test("battens are added up", () => {
  const sums = tasksOf("batten-crate").filter(({ ask }) => ask.includes("in all"));
  expect(sums.length).toBeGreaterThan(0);
  for (const { lines, answer } of sums) {
    const [length, count] = figuresIn(lines[0]!);
    expect(figuresIn(answer!)[0]).toBeCloseTo(length! * count!, 6);
  }
});

test("a class of twelve cuts twelve times as many pieces", () => {
  const { lines, answer } = tasksOf("bay-pad", 12).find(({ about }) => about.includes("class"))!;
  const [one, copies] = figuresIn(lines[0]!.replace("One", ""));
  expect(Number(answer)).toBe(one! * copies!);
});
