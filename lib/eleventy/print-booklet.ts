import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { editions } from "../booklet/editions.ts";
import type { EditionName } from "../booklet/editions.ts";
import type { Paper } from "../booklet/paper.ts";
import { patternSheets } from "../booklet/pattern-sheets.ts";
import { editionOf } from "./edition-of.ts";
import { finishPdf } from "./finish-pdf.ts";
import type { PdfWords } from "./finish-pdf.ts";
import { gateBooklet } from "./gate-booklet.ts";
import { gateFolded } from "./gate-folded.ts";
import { gatePatterns } from "./gate-patterns.ts";
import { imposePdf } from "./impose-pdf.ts";
import { linkPrints } from "./link-prints.ts";
import type { SiteBooklet } from "./open-site.ts";
import { printPage } from "./print-page.ts";
import { pageOf, paperOf, pdfOf, requestFor } from "./print-request.ts";
import type { PrintRequest } from "./print-request.ts";
import { readPdf } from "./read-pdf.ts";

export interface PrintResult {
  readonly file: string;
  readonly pages: number;
  readonly problems: readonly string[];
  /** What whoever asked should know of a good print: pieces that have no half. */
  readonly notes: readonly string[];
}

interface Place {
  /** Path of the browser. */
  readonly executable: string;
  readonly output: string;
}

/** Print one booklet and its pattern sheets. A PDF that fails its gates is not put in place. */
export async function printBooklet(
  entry: SiteBooklet,
  { paper, ...place }: Place & { readonly paper: Paper },
): Promise<readonly PrintResult[]> {
  return [
    await printRequest(entry, requestFor(entry, "booklet", paper.name), place),
    await printRequest(entry, requestFor(entry, "patterns", paper.name), place),
  ];
}

interface Made {
  readonly pdf: Uint8Array;
  readonly pages: number;
  readonly problems: readonly string[];
  readonly notes?: readonly string[];
}

/** Print one request; its page has been built. */
export async function printRequest(
  entry: SiteBooklet,
  request: PrintRequest,
  { executable, output }: Place,
): Promise<PrintResult> {
  const page = join(output, pageOf(entry, request));
  const { form } = request;
  const made =
    form === "patterns"
      ? await makePatterns(entry, request, { executable, page })
      : await makeEdition(entry, form, { executable, page, paper: paperOf(request) });
  const file = join(output, pdfOf(entry, request));
  if (made.problems.length === 0) {
    putInPlace(file, made.pdf);
    linkPrints(output, entry.slug);
  }
  return { file, pages: made.pages, problems: made.problems, notes: made.notes ?? [] };
}

async function makeEdition(
  entry: SiteBooklet,
  name: EditionName,
  { executable, page, paper }: { executable: string; page: string; paper: Paper },
): Promise<Made> {
  const booklet = editionOf(entry, name, paper.name);
  const { label, leastType } = editions[name];
  const words: PdfWords = {
    ...booklet,
    title: name === "booklet" ? booklet.title : `${booklet.title}: ${label.toLowerCase()}`,
  };
  const printed = await printPage(executable, page, { isPaged: true });
  const pdf = await finishPdf(printed.pdf, words);
  const facts = await readPdf(pdf, { withDetails: true });
  const problems = [
    ...printed.problems,
    ...gateBooklet(facts, booklet, { paper: booklet.paper, leastType }),
  ];
  if (name !== "folded") return { pdf, pages: facts.pages.length, problems };
  const folded = await finishPdf(await imposePdf(pdf, paper), words);
  const sides = await readPdf(folded);
  return {
    pdf: folded,
    pages: sides.pages.length,
    problems: [...problems, ...gateFolded(sides, facts.pages.length, paper)],
  };
}

async function makePatterns(
  entry: SiteBooklet,
  { paper, patterns }: PrintRequest,
  { executable, page }: { executable: string; page: string },
): Promise<Made> {
  const { title, author, summary, language } = entry.booklet;
  const printed = await printPage(executable, page, { isPaged: false });
  const words = { title: `${title}: full-size patterns`, author, summary, language };
  const pdf = await finishPdf(printed.pdf, words);
  const facts = await readPdf(pdf, { withDetails: true });
  const sheets = patternSheets(entry.plan, paper, patterns);
  return {
    pdf,
    pages: facts.pages.length,
    problems: [...printed.problems, ...gatePatterns(facts, sheets)],
    notes: sheets.wholes,
  };
}

/** Write whole, then rename, so that no half-written PDF is ever found. */
function putInPlace(file: string, pdf: Uint8Array): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(`${file}.part`, pdf);
  renameSync(`${file}.part`, file);
}
