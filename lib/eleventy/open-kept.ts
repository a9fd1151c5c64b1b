import { availableParallelism } from "node:os";
import { type Site, openContent } from "./open-site.ts";
import { diskCache } from "./plan-cache.ts";
import { readContent } from "./read-content.ts";
import { realStages } from "./real-stages.ts";
import { siteAddress } from "./site-address.ts";
import { workAhead } from "./work-ahead.ts";

interface KeptOptions {
  /** Where plans and drawings are kept from one build to the next. */
  readonly folder?: string;
  /** How many projects are worked out side by side; below 2, one after the other. */
  readonly threads?: number;
}

/** The site of the content folder, unchanged projects as the last build left them. */
export async function openKept(
  content = "content",
  { folder = ".cache/plans", threads = availableParallelism() }: KeptOptions = {},
): Promise<Site> {
  const address = siteAddress();
  const cache = diskCache(folder);
  const read = readContent(content, realStages);
  const fresh = read.projects.filter((project) => !cache.has(project));
  await workAhead(fresh, { threads, folder, address });
  return openContent(read, realStages, { address, cache });
}
