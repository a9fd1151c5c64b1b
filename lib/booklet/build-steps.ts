import type { Figure } from "../drawing/types.ts";
import type { Step } from "../steps/types.ts";
import type { Cite } from "./cite-sources.ts";
import type { FigureSource } from "./figure-source.ts";
import { chooseStepFigure } from "./choose-step-figure.ts";
import type { LinkUse } from "./link-uses.ts";
import { cautionNotice, reminderNotices, slugOf } from "./make-notice.ts";
import type { StepText, StepsPage, Use } from "./pages.ts";

/** The steps, numbered right through, in the parts of the work they belong to. */
export function buildSteps(
  steps: readonly Step[],
  figures: FigureSource,
  { cite, link }: { readonly cite: Cite; readonly link: LinkUse },
): readonly StepsPage[] {
  const groups = [...new Set(steps.map(({ group }) => group))];
  const numbered = steps.map((step, i) => {
    const earlier = steps.slice(0, i).flatMap(({ cautions }) => cautions.map(({ id }) => id));
    return {
      group: step.group,
      text: stepText(step, i + 1, {
        figures,
        cite,
        link,
        warned: new Set(step.isMethod === true ? [] : earlier),
      }),
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

interface StepContext {
  readonly figures: FigureSource;
  readonly cite: Cite;
  readonly link: LinkUse;
  /** Cautions that have stood in full before. */
  readonly warned: ReadonlySet<string>;
}

/** A drawing too large to stand beside the step: the page that has it. */
function shownElsewhere(
  { figure: id }: Step,
  figure: Figure | null,
  link: LinkUse,
): readonly Use[] {
  if (id === null || figure !== null) return [];
  const use = link(id);
  return use.target === null ? [] : [{ ...use, words: "the drawing" }];
}

function stepText(
  step: Step,
  number: number,
  { figures, cite, link, warned }: StepContext,
): StepText {
  const { figure, arrangement } = chooseStepFigure(step, figures);
  const [known, fresh] = [true, false].map((isKnown) =>
    step.cautions.filter(({ id }) => warned.has(id) === isKnown),
  );
  return {
    id: `step-${slugOf(step.id)}`,
    number,
    title: step.title,
    uses: [...step.uses.map(link), ...shownElsewhere(step, figure, link)],
    makes: step.makes,
    cautions: [
      ...fresh!.map((caution) => cautionNotice(caution, step.id, cite)),
      ...reminderNotices(known!, step.id),
    ],
    actions: step.actions,
    notes: step.notes,
    figure,
    arrangement,
    check: step.check,
    remedy: step.remedy,
  };
}
