import { buildCover } from "./build-cover.ts";
import { buildCuts } from "./build-cuts.ts";
import { buildFinish } from "./build-finish.ts";
import { buildFoam } from "./build-foam.ts";
import { buildLay } from "./build-lay.ts";
import { buildMaterials } from "./build-materials.ts";
import { buildPiece } from "./build-piece.ts";
import { buildRecord } from "./build-record.ts";
import { buildStart } from "./build-start.ts";
import { buildSteps } from "./build-steps.ts";
import { buildWays } from "./build-ways.ts";
import { buildWords } from "./build-words.ts";
import type { FigureSource } from "./figure-source.ts";
import { makeFormat } from "./make-format.ts";
import type { Booklet, BookletPage } from "./pages.ts";
import { choosePaper } from "./paper.ts";
import type { Paper } from "./paper.ts";
import type { Plan } from "./types.ts";

/**
 * The pages of a booklet in order, as plain data: all numbers are text in the project's unit.
 * A page with nothing to say is left out. `paper` is the project's own unless given.
 */
export function buildBooklet(
  plan: Plan,
  figures: FigureSource,
  { paper = choosePaper(plan.project) }: { readonly paper?: Paper } = {},
): Booklet {
  const { project } = plan;
  const format = makeFormat(project);
  const inner: readonly (BookletPage | null)[] = [
    buildMaterials(plan, format),
    buildFoam(plan, figures, format),
    ...plan.covers.flatMap((cover) => [
      buildWays(cover, figures, { format, isOnly: plan.covers.length === 1 }),
      ...cover.pieces.map((piece) => buildPiece(piece, figures, { plan, cover, format })),
    ]),
    ...plan.pieces.map((piece) => buildPiece(piece, figures, { plan, cover: null, format })),
    ...plan.lays.map((lay) => buildLay(lay, figures, { plan, format })),
    ...[...plan.sheets, ...plan.boards].map((cuts) => buildCuts(cuts, figures, { plan, format })),
    ...buildSteps(plan.steps, figures),
    buildFinish(plan, format),
    buildWords(plan, figures),
    buildRecord(plan, format),
  ];
  const pages = inner.filter((page) => page !== null);
  return {
    slug: project.slug,
    title: project.title,
    summary: project.summary,
    author: project.author,
    licence: project.licence,
    language: project.language,
    units: project.units,
    paper,
    pages: [buildCover(plan, figures, format), buildStart(plan, pages), ...pages],
  };
}
