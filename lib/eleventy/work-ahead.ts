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
  const waiting = [...projects];
  const order: ThreadOrder = { folder, address };
  await Promise.all(Array.from({ length: atOnce }, () => runThread(waiting, order)));
}

/** Hand projects to one thread as it asks for them, until none waits. It never fails, it only ends. */
function runThread(waiting: Project[], order: ThreadOrder): Promise<void> {
  return new Promise((resolve) => {
    const tell = (error: unknown): void => {
      if (process.env["DEBUG"] !== undefined) console.error(error);
    };
    try {
      // Without the words of the command: under tsx they would load a second loader.
      const options = { workerData: order, execArgv: [] };
      const worker = new Worker(new URL("./plan-worker.mjs", import.meta.url), options);
      worker.on("message", () => handNext(waiting, worker, tell));
      worker.on("error", tell);
      worker.on("exit", () => resolve());
    } catch (error) {
      tell(error);
      resolve();
    }
  });
}

/** A project that cannot be sent is passed over, and the next one is handed out. */
function handNext(waiting: Project[], worker: Worker, tell: (error: unknown) => void): void {
  for (let project = waiting.shift(); project !== undefined; project = waiting.shift()) {
    try {
      return worker.postMessage(project);
    } catch (error) {
      tell(error);
    }
  }
  void worker.terminate();
}
