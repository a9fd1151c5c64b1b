import type { Fault, Project } from "../project/types.ts";
import { findStep, stepNames } from "./find-step.ts";
import type { Step } from "./types.ts";

/** Notes and own steps of the author that name a step which does not exist; each lists those that do. */
export function listStepFaults(project: Pick<Project, "words">, steps: readonly Step[]): Fault[] {
  const computed = steps.filter(({ id }) => !/^own-\d+$/.test(id));
  const names = stepNames(computed);
  return project.words.flatMap((part, index) => {
    if (part.kind !== "step" && part.kind !== "before") return [];
    if (findStep(part.step, computed) !== null) return [];
    return [
      {
        field: `words.${index}`,
        fault: `line ${part.line}: there is no step "${part.step}"`,
        fix:
          names.length === 0
            ? "This project has no steps to add to"
            : `Use one of: ${names.join(", ")}`,
      },
    ];
  });
}
