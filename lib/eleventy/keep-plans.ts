import type { MessagePort } from "node:worker_threads";
import type { Project } from "../project/types.ts";
import { openProject } from "./open-project.ts";
import { diskCache } from "./plan-cache.ts";
import { realStages } from "./real-stages.ts";

/** What a thread is told once, before its first project. */
export interface ThreadOrder {
  /** The folder of the cache. */
  readonly folder: string;
  /** Where the site will stand on the web, if anywhere. */
  readonly address: string | null;
}

/**
 * The work of one thread: each project that comes is opened as a site opens it, which leaves its plan
 * and drawings in the cache. The answer only asks for the next: a project that fails is not in the
 * cache, so the site comes upon the same failure and names it.
 */
export function keepPlans(port: MessagePort, { folder, address }: ThreadOrder): void {
  const cache = diskCache(folder);
  port.on("message", (project: Project) => {
    openProject(project, realStages, { address, cache });
    port.postMessage("next");
  });
  port.postMessage("next");
}
