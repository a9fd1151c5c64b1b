import { parseArgs } from "node:util";
import { editionNames } from "../booklet/editions.ts";
import { buildSite } from "./build-site.ts";
import { browserHelp, findBrowser } from "./find-browser.ts";
import { editionOf } from "./edition-of.ts";
import { openKept } from "./open-kept.ts";
import type { SiteBooklet } from "./open-site.ts";
import { printRequest } from "./print-booklet.ts";
import { requestFor } from "./print-request.ts";
import type { PrintRequest } from "./print-request.ts";
import { count, reportSite } from "./report-site.ts";
import { runInTurn } from "./run-in-turn.ts";

const usage =
  "npm run pdf -- [slug…] [--paper a4|letter|a3|tabloid] " +
  `[--edition ${editionNames.join("|")}] [--halves] [--mirrored]`;

/** How many prints run side by side. @source our choice: a browser takes a core and some 300 MB */
const atOnce = 2;

interface Places {
  readonly content?: string;
  readonly output?: string;
}

/** Build, print what the words ask for, and check each PDF. Gives the exit code. */
export async function runPdf(
  words: readonly string[],
  { content = "content", output = "_site" }: Places = {},
): Promise<number> {
  const order = readOrder(words);
  const executable = findBrowser();
  if (executable === null) throw new Error(browserHelp);
  const site = await openKept(content);
  const unknown = order.slugs.filter((slug) => !site.booklets.some((each) => each.slug === slug));
  const chosen = site.booklets.filter(
    ({ slug }) => order.slugs.length === 0 || order.slugs.includes(slug),
  );
  const jobs = chosen.flatMap((entry) =>
    requestsFor(entry, order).map((request) => ({ entry, request })),
  );
  const requests = jobs.map(({ request }) => request);
  for (const { entry, request } of jobs) {
    if (request.form !== "patterns") editionOf(entry, request.form, request.paper);
  }
  if (site.booklets.length > 0) await buildSite(site, { content, output, requests });
  const faults = reportSite(site);
  if (unknown.length > 0) {
    const known = site.booklets.map(({ slug }) => slug).join(", ");
    throw new Error(
      `No good booklet is called ${unknown.join(", ")}. There are: ${known || "none"}.`,
    );
  }
  const failed = await printAll(jobs, { executable, output });
  return faults + failed > 0 ? 1 : 0;
}

interface Order {
  readonly slugs: readonly string[];
  readonly paper: "a4" | "letter" | "a3" | "tabloid" | null;
  readonly edition: (typeof editionNames)[number] | null;
  readonly halves: boolean;
  readonly isMirrored: boolean;
}

/** Read the words of the command; an error names what there is instead. */
export function readOrder(words: readonly string[]): Order {
  const { values, positionals } = parseArgs({
    args: [...words],
    allowPositionals: true,
    options: {
      paper: { type: "string" },
      edition: { type: "string" },
      halves: { type: "boolean", default: false },
      mirrored: { type: "boolean", default: false },
    },
  });
  const paper = pick(["a4", "letter", "a3", "tabloid"] as const, values.paper, "paper");
  const edition = pick(editionNames, values.edition, "edition");
  if (edition !== null && (paper === "a3" || paper === "tabloid")) {
    throw new Error(`Only pattern sheets are printed on ${paper}. Usage: ${usage}`);
  }
  if (edition !== null && (values.halves || values.mirrored)) {
    throw new Error(`Only pattern sheets know --halves and --mirrored. Usage: ${usage}`);
  }
  return {
    ...{ slugs: positionals, paper, edition },
    ...{ halves: values.halves, isMirrored: values.mirrored },
  };
}

function pick<T extends string>(known: readonly T[], word: string | undefined, kind: string) {
  if (word === undefined) return null;
  const found = known.find((each) => each === word.toLowerCase());
  if (found !== undefined) return found;
  throw new Error(`There is no ${kind} called ${word} here. Usage: ${usage}`);
}

/** The booklet and its patterns, unless the order is for one form only. */
function requestsFor(
  entry: SiteBooklet,
  { paper, edition, halves, isMirrored }: Order,
): readonly PrintRequest[] {
  const on = paper ?? entry.booklet.paper.name;
  if (edition !== null) return [requestFor(entry, edition, on)];
  const patterns = requestFor(entry, "patterns", on, { halves, isMirrored });
  const isLarge = paper === "a3" || paper === "tabloid";
  if (isLarge || halves || isMirrored) return [patterns];
  return [requestFor(entry, "booklet", on), patterns];
}

interface PrintJob {
  readonly entry: SiteBooklet;
  readonly request: PrintRequest;
}

/** Print two at a time, a line for each as it is done; gives how many PDFs failed their checks. */
async function printAll(
  jobs: readonly PrintJob[],
  place: { readonly executable: string; readonly output: string },
): Promise<number> {
  let done = 0;
  const results = await runInTurn(jobs, atOnce, async ({ entry, request }) => {
    const { file, pages, problems, notes } = await printRequest(entry, request, place);
    done += 1;
    const says = problems.length === 0 ? count(pages, "page") : "not written";
    console.log(
      `[${done}/${jobs.length}] ${file}: ${[says, ...notes].join("; ").replace(/\.; /g, "; ")}`,
    );
    problems.forEach((problem) => console.log(`    ${problem}`));
    return problems.length > 0;
  });
  return results.filter((isBad) => isBad).length;
}
