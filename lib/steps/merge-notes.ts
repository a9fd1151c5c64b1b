import type { TextPart } from "../project/types.ts";
import { findStep } from "./find-step.ts";
import type { Step } from "./types.ts";

/**
 * The author's notes go to the steps they name, and the author's own steps stand before the step
 * they name, in the order of the text. Names that no step has are left out here; they are faults.
 */
export function mergeNotes(steps: readonly Step[], words: readonly TextPart[]): Step[] {
  const own = words.filter((part) => part.kind === "before");
  const notes = words.filter((part) => part.kind === "step");
  return steps.flatMap((step) => [
    ...own
      .filter((part) => findStep(part.step, steps) === step.id)
      .map((part) => ownStep(part, step, own.indexOf(part) + 1)),
    {
      ...step,
      notes: [
        ...step.notes,
        ...notes
          .filter((part) => findStep(part.step, steps) === step.id)
          .map(({ markdown }) => markdown),
      ],
    },
  ]);
}

function ownStep(part: Extract<TextPart, { kind: "before" }>, next: Step, number: number): Step {
  return {
    id: `own-${number}`,
    group: next.group,
    title: part.title,
    actions: [],
    uses: [],
    makes: [],
    cautions: [],
    check: null,
    remedy: null,
    figure: null,
    notes: [part.markdown],
  };
}
