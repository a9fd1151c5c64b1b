import { ProjectError } from "./project-error.ts";
import { suggest } from "./suggest.ts";
import type { Project } from "./types.ts";

/** What exists once a project has been worked out. */
export interface KnownReferences {
  readonly figures: readonly string[];
  readonly steps: readonly string[];
}

/** Check that every figure and step the text names exists; a fault lists those that do. */
export function checkReferences(
  { file, words }: Project,
  { figures, steps }: KnownReferences,
): readonly ProjectError[] {
  return words.flatMap((part) => {
    const at = { file, line: part.line, field: "text" };
    switch (part.kind) {
      case "prose":
      case "caution":
      case "tip":
        return [];
      case "figure":
        if (figures.includes(part.figure)) return [];
        return [unknown(at, { what: "figure", name: part.figure, known: figures })];
      case "step":
      case "before":
        if (steps.includes(part.step)) return [];
        return [unknown(at, { what: "step", name: part.step, known: steps })];
    }
  });
}

function unknown(
  at: { readonly file: string; readonly line: number; readonly field: string },
  {
    what,
    name,
    known,
  }: { readonly what: string; readonly name: string; readonly known: readonly string[] },
): ProjectError {
  const fault = `names the ${what} ${name}, which this project does not have`;
  const list = known.length > 0 ? `There are ${known.join(", ")}` : `There is no ${what}`;
  const nearest = suggest(name, known, "");
  // The whole list stands behind a near name, for the near one may be wrong.
  const fix = nearest.startsWith("Write ") ? `${nearest}. ${list}` : list;
  return new ProjectError(at, fault, fix);
}
