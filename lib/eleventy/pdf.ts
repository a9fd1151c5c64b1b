import { parseArgs } from "node:util";
import { papers } from "../booklet/paper.ts";
import type { Paper } from "../booklet/paper.ts";
import { buildSite } from "./build-site.ts";
import { browserHelp, findBrowser } from "./find-browser.ts";
import { openKept } from "./open-kept.ts";
import type { SiteBooklet } from "./open-site.ts";
import { printBooklet } from "./print-booklet.ts";
import { count, reportSite } from "./report-site.ts";
import { runCommand } from "./run-command.ts";

const usage = "npm run pdf -- [slug…] [--paper a4|letter]";

/** `npm run pdf`: build, then print every booklet, or those named, and check each PDF. */
await runCommand(async () => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { paper: { type: "string" } },
  });
  const asked = values.paper?.toLowerCase();
  if (asked !== undefined && asked !== "a4" && asked !== "letter") {
    throw new Error(`There is no paper called ${asked} here. Usage: ${usage}`);
  }
  const executable = findBrowser();
  if (executable === null) throw new Error(browserHelp);
  const site = openKept();
  const unknown = positionals.filter((slug) => !site.booklets.some((each) => each.slug === slug));
  if (site.booklets.length > 0) await buildSite(site);
  const faults = reportSite(site);
  if (unknown.length > 0) {
    const known = site.booklets.map(({ slug }) => slug).join(", ");
    throw new Error(
      `No good booklet is called ${unknown.join(", ")}. There are: ${known || "none"}.`,
    );
  }
  const chosen = site.booklets.filter(
    ({ slug }) => positionals.length === 0 || positionals.includes(slug),
  );
  const failed = await printAll(chosen, executable, asked === undefined ? null : papers[asked]);
  return faults + failed > 0 ? 1 : 0;
});

/** Print them one after the other; gives how many PDFs failed their checks. */
async function printAll(
  booklets: readonly SiteBooklet[],
  executable: string,
  paper: Paper | null,
): Promise<number> {
  let failed = 0;
  for (const [i, entry] of booklets.entries()) {
    console.log(`[${i + 1}/${booklets.length}] ${entry.slug}`);
    const job = { executable, output: "_site", paper: paper ?? entry.booklet.paper };
    for (const { file, pages, problems } of await printBooklet(entry, job)) {
      if (problems.length > 0) failed += 1;
      console.log(
        problems.length === 0 ? `  ${file}: ${count(pages, "page")}` : `  ${file}: not written`,
      );
      problems.forEach((problem) => console.log(`    ${problem}`));
    }
  }
  return failed;
}
