import { formatNote, lintText } from "../project/lint-text.ts";
import { makeFormat } from "../units/make-format.ts";
import { lintSteps } from "../steps/lint-steps.ts";
import { listSupplied } from "../steps/list-supplied.ts";
import type { Site } from "./open-site.ts";

export interface ContentNotes {
  /** Remarks on wording: worth mending, they stop nothing. */
  readonly notes: readonly string[];
  readonly faults: readonly string[];
}

/** Hold the author's text and every computed step to the rules of good instructions. */
export const lintContent = ({ booklets, faults }: Site): ContentNotes => ({
  faults,
  notes: booklets.flatMap(({ project, plan, slug }) => [
    ...(project.variant === null ? lintText(project).map(formatNote) : []),
    ...lintSteps(plan.steps, listSupplied({ ...plan, format: makeFormat(project) })).map(
      (note) => `${slug}: ${note}`,
    ),
  ]),
});
