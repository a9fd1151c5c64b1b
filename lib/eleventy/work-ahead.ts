import { Worker } from "node:worker_threads";
import type { Count } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import type { ThreadOrder } from "./keep-plans.ts";

interface AheadOptions extends ThreadOrder {
  readonly threads: Count;
}

/**
 * Work out projects side by side and leave them in the cache, for the site to find. Nothing is lost
 * where a thread fails: what it leaves undone is worked out when the site is opened. One project alone
 * is left for that too, since a thread would only add its start.
 */
export async function workAhead(
  projects: readonly Project[],
  { threads, folder, address }: AheadOptions,
): Promise<void> {
  const atOnce = Math.min(threads, projects.length);
  if (atOnce < 2) return;
  const waiting = longestFirst(projects);
  const order: ThreadOrder = { folder, address };
  await Promise.all(Array.from({ length: atOnce }, () => runThread(waiting, order)));
}

/** @source our choice: what says most takes longest, and a long one begun last leaves cores idle */
const longestFirst = (projects: readonly Project[]): Project[] =>
  projects
    .map((project) => ({ project, length: JSON.stringify(project).length }))
    .sort((a, b) => b.length - a.length)
    .map(({ project }) => project);

/** Hand projects to one thread as it asks for them, until none waits. It never fails, it only ends. */
function runThread(waiting: Project[], order: ThreadOrder): Promise<void> {
  return new Promise((resolve) => {
    const end = (error: unknown): void => {
      if (process.env["DEBUG"] !== undefined) console.error(error);
      resolve();
    };
    try {
      // Without the words of the command: under tsx they would load a second loader.
      const options = { workerData: order, execArgv: [] };
      const worker = new Worker(new URL("./plan-worker.mjs", import.meta.url), options);
      worker.on("message", () => {
        const project = waiting.shift();
        if (project === undefined) void worker.terminate();
        else worker.postMessage(project);
      });
      worker.on("error", end);
      worker.on("exit", () => resolve());
    } catch (error) {
      end(error);
    }
  });
}
