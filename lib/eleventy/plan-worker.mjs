import { parentPort, workerData } from "node:worker_threads";
import { tsImport } from "tsx/esm/api";

// A thread does not have its parent's loader in every version of Node, so it brings its own.
const { keepPlans } = await tsImport("./keep-plans.ts", import.meta.url);
keepPlans(parentPort, workerData);
