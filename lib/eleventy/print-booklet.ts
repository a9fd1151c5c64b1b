import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Paper } from "../booklet/paper.ts";
import { patternSheets } from "../booklet/pattern-sheets.ts";
import { finishPdf } from "./finish-pdf.ts";
import { gateBooklet, gatePatterns } from "./gate-pdf.ts";
import type { SiteBooklet } from "./open-site.ts";
import { printPage } from "./print-page.ts";
import { readPdf } from "./read-pdf.ts";

export interface PrintResult {
  readonly file: string;
  readonly pages: number;
  readonly problems: readonly string[];
}

interface Job {
  /** Path of the browser. */
  readonly executable: string;
  readonly output: string;
  readonly paper: Paper;
}

/** Print one booklet and its pattern sheets. A PDF that fails its gates is not put in place. */
export async function printBooklet(entry: SiteBooklet, job: Job): Promise<readonly PrintResult[]> {
  return [await printPages(entry, job), await printPatterns(entry, job)];
}

async function printPages(
  entry: SiteBooklet,
  { executable, output, paper }: Job,
): Promise<PrintResult> {
  const booklet = paper.name === entry.booklet.paper.name ? entry.booklet : entry.otherBooklet;
  const printed = await printPage(executable, pagePath(entry, { output, paper, kind: "print" }), {
    isPaged: true,
  });
  const pdf = await finishPdf(printed.pdf, booklet);
  const facts = await readPdf(pdf);
  const problems = [...printed.problems, ...gateBooklet(facts, booklet, paper)];
  const file = join(output, entry.slug, `${entry.slug}${suffix(entry, paper)}.pdf`);
  return { file: putInPlace(file, pdf, problems), pages: facts.pages.length, problems };
}

async function printPatterns(
  entry: SiteBooklet,
  { executable, output, paper }: Job,
): Promise<PrintResult> {
  const { title, author, summary, language } = entry.booklet;
  const printed = await printPage(
    executable,
    pagePath(entry, { output, paper, kind: "patterns" }),
    {
      isPaged: false,
    },
  );
  const words = { title: `${title}: full-size patterns`, author, summary, language };
  const pdf = await finishPdf(printed.pdf, words);
  const facts = await readPdf(pdf, { withPaths: true });
  const problems = [
    ...printed.problems,
    ...gatePatterns(facts, patternSheets(entry.plan, paper.name)),
  ];
  const file = join(output, entry.slug, `${entry.slug}-patterns${suffix(entry, paper)}.pdf`);
  return { file: putInPlace(file, pdf, problems), pages: facts.pages.length, problems };
}

const isOwn = ({ booklet }: SiteBooklet, paper: Paper): boolean =>
  booklet.paper.name === paper.name;

/** The project's own paper needs no mention; the other is named in the file. */
const suffix = (entry: SiteBooklet, paper: Paper): string =>
  isOwn(entry, paper) ? "" : `-${paper.name}`;

function pagePath(
  entry: SiteBooklet,
  {
    output,
    paper,
    kind,
  }: { readonly output: string; readonly paper: Paper; readonly kind: string },
): string {
  const folder = join(output, entry.slug, kind);
  return join(isOwn(entry, paper) ? folder : join(folder, paper.name), "index.html");
}

/** Write whole, then rename, so that no half-written PDF is ever found. */
function putInPlace(file: string, pdf: Uint8Array, problems: readonly string[]): string {
  if (problems.length > 0) return file;
  mkdirSync(join(file, ".."), { recursive: true });
  writeFileSync(`${file}.part`, pdf);
  renameSync(`${file}.part`, file);
  return file;
}
