import type { Fault, Project } from "../project/types.ts";
import type { Step } from "./types.ts";

/** Notes and own steps of the author that name a step which does not exist; each lists those that do. */
export function listStepFaults(project: Pick<Project, "words">, steps: readonly Step[]): Fault[] {
  const ids = steps.map(({ id }) => id).filter((id) => !/^own-\d+$/.test(id));
  return project.words.flatMap((part, index) => {
    if ((part.kind !== "step" && part.kind !== "before") || ids.includes(part.step)) return [];
    return [
      {
        field: `words.${index}`,
        fault: `line ${part.line}: there is no step "${part.step}"`,
        fix:
          ids.length === 0
            ? "This project has no steps to add to"
            : `Use one of: ${ids.join(", ")}`,
      },
    ];
  });
}
