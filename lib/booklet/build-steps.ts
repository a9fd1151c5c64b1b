import type { Step } from "../steps/types.ts";
import { firstFigure } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import { cautionNotice, slugOf } from "./make-notice.ts";
import type { StepText, StepsPage } from "./pages.ts";

/** The steps, numbered right through, one page for each part of the work. */
export function buildSteps(steps: readonly Step[], figures: FigureSource): readonly StepsPage[] {
  const groups = [...new Set(steps.map(({ group }) => group))];
  const numbered = steps.map((step, i) => {
    const earlier = steps.slice(0, i).flatMap(({ cautions }) => cautions.map(({ id }) => id));
    return {
      group: step.group,
      text: stepText(step, i + 1, { figures, warned: new Set(earlier) }),
    };
  });
  return groups.map((group) => {
    const own = numbered.flatMap((each) => (each.group === group ? [each.text] : []));
    return {
      kind: "steps",
      id: `steps-${slugOf(group)}`,
      title: titleOfSteps(group, own),
      steps: own,
    };
  });
}

function titleOfSteps(group: string, steps: readonly StepText[]): string {
  const first = steps[0]?.number ?? 0;
  const last = steps.at(-1)?.number ?? 0;
  return first === last ? `Step ${first}: ${group}` : `Steps ${first} to ${last}: ${group}`;
}

/** Room beside the words of a step. @source our choice: leaves 50 characters a line on A4 */
const besideRoom: FigureRoom = { width: 76, height: 110 };
/** Room below the words, so that words and figure share a page. */
const belowRoom: FigureRoom = { width: 165, height: 110 };

function stepText(
  step: Step,
  number: number,
  { figures, warned }: { readonly figures: FigureSource; readonly warned: ReadonlySet<string> },
): StepText {
  const ids = step.figure === null ? [] : [step.figure];
  const beside = firstFigure(figures, ids, besideRoom);
  const hasRoom =
    beside !== null && beside.collisions.length === 0 && beside.width <= besideRoom.width;
  const figure = hasRoom ? beside : firstFigure(figures, ids, belowRoom);
  return {
    id: `step-${slugOf(step.id)}`,
    number,
    title: step.title,
    uses: step.uses,
    makes: step.makes,
    cautions: step.cautions.map((caution) =>
      cautionNotice(caution, step.id, { isReminder: warned.has(caution.id) }),
    ),
    actions: step.actions,
    notes: step.notes,
    figure,
    arrangement: figure === null ? "bare" : hasRoom ? "beside" : "below",
    check: step.check,
    remedy: step.remedy,
  };
}
