import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { columnsOf, dropBeaten } from "../../lib/booklet/drop-beaten.ts";
import { readProject } from "../../lib/project/read-project.ts";

const files = ["content/library-corner-seat.md", "content/bay-window-pad.md"].concat(
  ["seat-block", "tied-wedge", "padded-corner"].map((name) => `tests/fixtures/projects/${name}.md`),
);

describe("the ways offered", () => {
  test.each(files)("in %s hold none that another betters in every column", (file) => {
    const [project] = readProject({ file, text: readFileSync(file, "utf8") }).projects;
    for (const { ways } of computePlan(project!).covers) {
      expect(ways.filter(({ isChosen }) => isChosen).length).toBe(1);
      for (const way of ways) {
        for (const other of ways.filter((one) => one !== way)) {
          const isWorse = columnsOf(way).every((value, i) => value > columnsOf(other)[i]!);
          expect(isWorse, `${way.id} against ${other.id}`).toBe(false);
        }
      }
    }
  });

  test.each(files.slice(2))(
    "in %s have the shortest lay chosen where least cloth is asked for",
    (file) => {
      const [project] = readProject({ file, text: readFileSync(file, "utf8") }).projects;
      const solids = project!.solids.map((spec) => ({
        ...spec,
        cover: spec.cover && { ...spec.cover, panels: "least-cloth" as const },
      }));
      for (const { ways } of computePlan({ ...project!, solids }).covers) {
        const chosen = ways.find(({ isChosen }) => isChosen)!;
        for (const way of ways) {
          if (way.clothLength === null || way.turnedFaces.length > chosen.turnedFaces.length)
            continue;
          expect(way.clothLength).toBeGreaterThan((chosen.clothLength ?? Infinity) - 1.5);
        }
      }
    },
  );

  test("lose a way that is no better anywhere, and never the chosen one", () => {
    const way = (id: string, seamLength: number, isChosen = false) =>
      ({
        id,
        panels: [],
        seamLength,
        clothLength: 1000,
        turnedFaces: [],
        inwardFolds: 0,
        isChosen,
      }) as never;
    const kept = dropBeaten([way("a", 500, true), way("b", 600), way("c", 400), way("d", 400)]);
    expect(kept.map(({ id }) => id)).toEqual(["a", "c"]);
  });
});
