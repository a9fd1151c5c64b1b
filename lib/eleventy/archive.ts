import { buildSite } from "./build-site.ts";
import { openSite } from "./open-site.ts";
import { reportSite } from "./report-site.ts";
import { runCommand } from "./run-command.ts";
import { writeArchive } from "./write-archive.ts";

/** `npm run archive`: build, then put every booklet, or those named, up for keeping. */
await runCommand(async () => {
  const slugs = process.argv.slice(2);
  const site = openSite();
  const unknown = slugs.filter((slug) => !site.booklets.some((each) => each.slug === slug));
  if (unknown.length > 0) throw new Error(`No good booklet is called ${unknown.join(", ")}.`);
  if (site.booklets.length > 0) await buildSite(site);
  for (const entry of site.booklets) {
    if (slugs.length === 0 || slugs.includes(entry.slug)) {
      console.log(writeArchive(entry, "_site"));
    }
  }
  return reportSite(site);
});
