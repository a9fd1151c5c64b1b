import { buildCover } from "./build-cover.ts";
import { buildCuts } from "./build-cuts.ts";
import { buildFinish } from "./build-finish.ts";
import { buildFoam } from "./build-foam.ts";
import { buildLay, layHeight } from "./build-lay.ts";
import { buildMaterials } from "./build-materials.ts";
import { type CoverPiece, buildPieces } from "./build-pieces.ts";
import { buildRisk } from "./build-risk.ts";
import { buildServe } from "./build-serve.ts";
import { buildRecord } from "./build-record.ts";
import { buildStart } from "./build-start.ts";
import { buildSteps } from "./build-steps.ts";
import { buildWays } from "./build-ways.ts";
import { buildWords } from "./build-words.ts";
import { citeFrom, listSources } from "./cite-sources.ts";
import type { FigureSource } from "./figure-source.ts";
import { linkUses } from "./link-uses.ts";
import { makeFormat } from "../units/make-format.ts";
import type { Booklet, BookletPage, PlacedPage } from "./pages.ts";
import { choosePaper } from "./paper.ts";
import type { Paper } from "./paper.ts";
import type { Plan } from "./types.ts";

export interface BookletOptions {
  /** The project's own unless given. */
  readonly paper?: Paper;
  /** Where the booklet's page stands on the web; null or absent where it stands nowhere. */
  readonly address?: string | null;
}

/**
 * The pages of a booklet in order, as plain data: all numbers are text in the project's unit.
 * A page with nothing to say is left out.
 */
export function buildBooklet(
  plan: Plan,
  figures: FigureSource,
  { paper = choosePaper(plan.project), address = null }: BookletOptions = {},
): Booklet {
  const { project } = plan;
  const format = makeFormat(project);
  const sources = listSources(plan.findings, plan.steps);
  const cite = citeFrom(sources);
  const lays = plan.lays.map((lay) => buildLay(lay, figures, { plan, format }));
  const next = lays[0] === undefined ? 0 : layHeight(lays[0]);
  const shown: readonly (BookletPage | null)[] = [
    buildWords(plan, figures),
    buildMaterials(plan, format),
    buildFoam(plan, figures, format),
    ...plan.covers.map((cover) =>
      buildWays(cover, figures, { format, isOnly: plan.covers.length === 1 }),
    ),
    ...buildPieces(allPieces(plan), figures, { plan, format, paper: paper.name, next }),
    ...lays,
    ...[...plan.sheets, ...plan.boards].map((cuts) => buildCuts(cuts, figures, { plan, format })),
  ];
  const before = shown.filter((page) => page !== null);
  const after: readonly (BookletPage | null)[] = [
    ...buildSteps(plan.steps, figures, { cite, link: linkUses(plan, before) }),
    buildFinish(plan, format),
    buildServe(plan, figures, format),
    buildRecord(plan, format),
    sources,
    buildRisk(plan),
  ];
  const pages = [...before, ...after.filter((page) => page !== null)];
  return {
    slug: project.slug,
    edition: "booklet",
    title: project.title,
    summary: project.summary,
    author: project.author,
    licence: project.licence,
    language: project.language,
    units: project.units,
    paper,
    pages: placePages([
      buildCover(plan, figures, { format, address }),
      buildStart(plan, pages, cite),
      ...pages,
    ]),
  };
}

/** The pieces of the covers, then those that belong to none. */
const allPieces = ({ covers, pieces }: Plan): readonly CoverPiece[] => [
  ...covers.flatMap((cover) => cover.pieces.map((piece) => ({ piece, cover }))),
  ...pieces.map((piece) => ({ piece, cover: null })),
];

/**
 * What to read first, what is needed, the steps, the record for the archive and the risk assessment
 * start a sheet, for they are handed out or copied by themselves. All else runs on where there is room.
 */
const placePages = (pages: readonly BookletPage[]): readonly PlacedPage[] =>
  pages.map((page, i) => ({ ...page, startsSheet: startsSheet(page, pages[i - 1]) }));

function startsSheet({ kind }: BookletPage, before: BookletPage | undefined): boolean {
  if (before === undefined) return true;
  // A word from the author is seldom worth a sheet.
  return partOf[kind] !== partOf[before.kind] && before.kind !== "words";
}

type Part = "front" | "start" | "material" | "steps" | "record" | "risk";

const partOf: Readonly<Record<BookletPage["kind"], Part>> = {
  cover: "front",
  start: "start",
  words: "start",
  materials: "material",
  foam: "material",
  ways: "material",
  piece: "material",
  lay: "material",
  cuts: "material",
  steps: "steps",
  finish: "steps",
  serve: "steps",
  risk: "risk",
  record: "record",
  sources: "record",
  brief: "front",
  worksheet: "start",
  lesson: "steps",
};
