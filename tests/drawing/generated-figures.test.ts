import { describe, expect, test } from "vitest";
import { drawFigure, listFigures } from "../../lib/drawing/index.ts";
import { findOutside } from "../../lib/drawing/find-outside.ts";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { drawGenerated } from "../../lib/eleventy/bench-figures.ts";
import { randomProject } from "../../lib/eleventy/random-project.ts";
import { readProjects } from "../../lib/project/read-projects.ts";

describe("figures of generated projects", () => {
  // The first of 300: `npm run bench -- figures` draws them all. Several of the seeds named
  // here once had a label on a line, a label on another, or a drawing too small to read.
  test.each([1, 2, 3, 4, 6, 9, 105])("of seed %i have every label clear and inside", (seed) => {
    const { faults, refused, figures } = drawGenerated(1, seed);
    expect(refused).toEqual([]);
    expect(figures).toBeGreaterThan(0);
    expect(faults).toEqual([]);
  });

  test("are the same files for the same seed, and others for others", () => {
    expect(randomProject(3)).toEqual(randomProject(3));
    expect(randomProject(3).text).not.toBe(randomProject(4).text);
  });

  test("a label that is pushed over the edge is found", () => {
    const { projects } = readProjects([randomProject(1)]);
    const plan = computePlan(projects[0]!);
    const figure = drawFigure(plan, listFigures(plan)[0]!)!;
    expect(findOutside(figure)).toEqual([]);
    const narrow = { ...figure, width: figure.width / 3 };
    expect(findOutside(narrow).length).toBeGreaterThan(0);
  });
});
