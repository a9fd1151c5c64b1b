import { computePlan } from "../booklet/compute-plan.ts";
import { drawFigure, listFigures } from "../drawing/index.ts";
import { findOutside } from "../drawing/find-outside.ts";
import type { Count } from "../plane/types.ts";
import { readProjects } from "../project/read-projects.ts";
import { randomProject } from "./random-project.ts";
import { readCounts } from "./read-counts.ts";

export interface FigureBench {
  readonly projects: Count;
  readonly figures: Count;
  /** Labels that meet another label or a line, or lie outside their figure: a line each. */
  readonly faults: readonly string[];
  /** Generated files that the program refused, a line each. */
  readonly refused: readonly string[];
}

/** Whom to tell while projects are drawn: a run that is stopped still tells something. */
export interface FigureWatch {
  readonly onProjects: (soFar: FigureBench) => void;
  readonly onFault: (line: string) => void;
}

/** A word on progress after so many projects. */
const projectsBetween: Count = 20;

const nobody: FigureWatch = { onProjects: () => undefined, onFault: () => undefined };

/** Draw every figure of some generated projects and look for labels in the way. */
export function drawGenerated(
  runs: Count,
  firstSeed: Count = 1,
  watch: FigureWatch = nobody,
): FigureBench {
  const faults: string[] = [];
  const refused: string[] = [];
  let figures = 0;
  for (let seed = firstSeed; seed < firstSeed + runs; seed++) {
    const { projects, faults: unread } = readProjects([randomProject(seed)]);
    refused.push(...unread.map(({ message }) => message));
    for (const project of projects) {
      const plan = computePlan(project);
      refused.push(...plan.faults.map((fault) => `seed ${seed}: ${JSON.stringify(fault)}`));
      for (const id of listFigures(plan)) {
        const figure = drawFigure(plan, id);
        if (figure === null) continue;
        figures += 1;
        const found = [...figure.collisions, ...findOutside(figure)];
        const lines = found.map((line) => `seed ${seed} ${id}: ${line}`);
        lines.forEach((line) => watch.onFault(line));
        faults.push(...lines);
      }
    }
    const done = seed - firstSeed + 1;
    if (done % projectsBetween === 0 && done < runs)
      watch.onProjects({ projects: done, figures, faults, refused });
  }
  return { projects: runs, figures, faults, refused };
}

/** `npm run bench -- figures [--runs N] [--seed N]`: labels of figures over generated projects. */
export function benchFigures(words: readonly string[]): Promise<void> {
  const { runs, seed } = readCounts(words, { runs: 300, seed: 1 });
  const start = performance.now();
  const report = ({ projects, figures, faults, refused }: FigureBench) => {
    const seconds = ((performance.now() - start) / 1000).toFixed(0);
    console.log(
      `${projects} projects, ${figures} figures in ${seconds} s: ${faults.length} labels in the way, ${refused.length} refused`,
    );
  };
  const drawn = drawGenerated(runs, seed, { onProjects: report, onFault: console.log });
  const { faults, refused } = drawn;
  refused.forEach((line) => console.log(line));
  report(drawn);
  if (faults.length > 0) return Promise.reject(new Error(`${faults.length} labels in the way`));
  return Promise.resolve();
}
