import type { EditionName } from "../booklet/editions.ts";
import { otherPaper, papers } from "../booklet/paper.ts";
import type { Paper, PaperName } from "../booklet/paper.ts";
import { plainPatterns } from "../booklet/pattern-sheets.ts";
import type { PatternOptions } from "../booklet/pattern-sheets.ts";
import type { SiteBooklet } from "./open-site.ts";

/** One PDF that somebody asked for. */
export interface PrintRequest {
  readonly slug: string;
  readonly form: EditionName | "patterns";
  /** What lies in the printer. */
  readonly paper: PaperName;
  readonly patterns: PatternOptions;
}

/** A request for a form on a paper, its patterns plain unless told. */
export const requestFor = (
  { slug }: Pick<SiteBooklet, "slug">,
  form: PrintRequest["form"],
  paper: PaperName,
  patterns: PatternOptions = plainPatterns,
): PrintRequest => ({ slug, form, paper, patterns });

/** Whether every build writes the page; others are written when they are asked for. */
export const isAlwaysBuilt = (
  { booklet: { paper: own } }: SiteBooklet,
  { form, paper, patterns }: PrintRequest,
): boolean =>
  (form === "booklet" || form === "patterns") &&
  [own.name, otherPaper(own).name].includes(paper) &&
  !patterns.halves &&
  !patterns.isMirrored;

/** Where the page of a request lies, from the root of the site. */
export function pageOf(entry: SiteBooklet, request: PrintRequest): string {
  const { form, paper } = request;
  const folder = `${entry.slug}/${form === "booklet" ? "print" : form}`;
  if (!isAlwaysBuilt(entry, request))
    return `${folder}/${paper}${kindOf(request.patterns)}/index.html`;
  return paper === entry.booklet.paper.name
    ? `${folder}/index.html`
    : `${folder}/${paper}/index.html`;
}

/** Name of the PDF. The project's own paper needs no mention; any other is named. */
export function pdfOf(entry: SiteBooklet, { form, paper, patterns }: PrintRequest): string {
  const kind = form === "booklet" ? "" : `-${form}`;
  const on = paper === entry.booklet.paper.name ? "" : `-${paper}`;
  return `${entry.slug}/${entry.slug}${kind}${on}${kindOf(patterns)}.pdf`;
}

const kindOf = ({ halves, isMirrored }: PatternOptions): string =>
  `${halves ? "-halves" : ""}${isMirrored ? "-mirrored" : ""}`;

export const paperOf = ({ paper }: PrintRequest): Paper => papers[paper];
