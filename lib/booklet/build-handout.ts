import { listTools } from "../steps/list-tools.ts";
import { amount } from "./build-materials.ts";
import { buildSteps } from "./build-steps.ts";
import { citeFrom, listSources } from "./cite-sources.ts";
import { firstFigure } from "./figure-source.ts";
import type { FigureSource } from "./figure-source.ts";
import { listTasks } from "./list-tasks.ts";
import { makeFormat } from "../units/make-format.ts";
import type { Format } from "../units/make-format.ts";
import { findingNotice } from "./make-notice.ts";
import { gravestFirst, mergeFindings } from "./merge-findings.ts";
import { titleOf } from "./open-hyphens.ts";
import type { Booklet, BookletPage, BriefPage, LessonPage, PlacedPage } from "./pages.ts";
import type { Paper } from "./paper.ts";
import { figures as numbers, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

/**
 * The handout of a class: what is made and from what, sizes to work out, then the steps with boxes to
 * tick, each part of the work begun on a page of its own. With answers, the same pages have the blanks filled in.
 */
export function buildHandout(
  plan: Plan,
  figures: FigureSource,
  { paper, hasAnswers }: { readonly paper: Paper; readonly hasAnswers: boolean },
): Booklet {
  const { project } = plan;
  const format = makeFormat(project);
  const tasks = listTasks(plan, format);
  const brief = buildBrief(plan, figures, format);
  const pages: readonly BookletPage[] = [
    brief,
    ...(tasks.length === 0
      ? []
      : [
          {
            kind: "worksheet" as const,
            id: "worksheet",
            title: "Work it out",
            tasks: tasks.map((task) => (hasAnswers ? task : { ...task, answer: null })),
          },
        ]),
    ...lessons(plan, figures),
  ];
  const { slug, title, summary, author, licence, language, units } = project;
  return {
    ...{ slug, title, summary, author, licence, language, units, paper },
    edition: hasAnswers ? "answers" : "handout",
    pages: pages.map((page): PlacedPage => ({ ...page, startsSheet: true })),
  };
}

function buildBrief(plan: Plan, figures: FigureSource, format: Format): BriefPage {
  const { project, solids, materials, findings, steps } = plan;
  const drawings = ["finished", ...solids.map(({ id }) => `solid/${id}`)];
  const copies = project.copies;
  const cite = citeFrom(listSources(findings, steps));
  const grave = findings.filter(({ severity }) => severity === "danger" || severity === "warning");
  return {
    kind: "brief",
    id: "brief",
    title: project.title,
    summary: project.summary,
    figure: firstFigure(figures, drawings, briefRoom),
    sizes: solids.map(({ id, size }) => ({
      label: solids.length === 1 ? "Length × depth × height" : titleOf(id),
      value: format.sizes(size),
    })),
    table: tableOrNull("handout-materials", "What you need", {
      columns: [
        words("Item"),
        numbers(copies > 1 ? "For one" : "Needed"),
        ...(copies > 1 ? [numbers(`For all ${copies}`)] : []),
      ],
      rows: materials.map((line) => [
        line.item,
        amount(line.perCopy, line, format),
        ...(copies > 1 ? [amount(line.quantity, line, format)] : []),
      ]),
    }),
    tools: listTools(steps),
    notices: mergeFindings(gravestFirst(grave)).map((finding) => ({
      ...findingNotice(finding, cite),
      source: null,
    })),
  };
}

const briefRoom = { width: 165, height: 75 };

/** Each group of steps is a part, with the size to write down where its check has one. */
function lessons(plan: Plan, figures: FigureSource): readonly LessonPage[] {
  const plainly = (words: string) => ({ words, target: null });
  return buildSteps(plan.steps, figures, { cite: () => null, link: plainly }).map(
    ({ id, title, steps }): LessonPage => ({
      kind: "lesson",
      id,
      title,
      steps: steps.map((step) => ({ ...step, isMeasured: /\d/.test(step.check ?? "") })),
    }),
  );
}
