import { buildSite } from "./build-site.ts";
import { openKept } from "./open-kept.ts";
import { reportSite } from "./report-site.ts";
import { runCommand } from "./run-command.ts";

/** `npm run build`: check every project, write every good booklet, name every fault. */
await runCommand(async () => {
  const site = await openKept();
  if (site.booklets.length > 0 || site.faults.length === 0) await buildSite(site);
  return reportSite(site);
});
