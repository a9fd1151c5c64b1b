import { fillBottomLeft } from "./fill-bottom-left.ts";
import { layBound } from "./lay-bound.ts";
import { layOrders } from "./lay-orders.ts";
import { type NoFitTable, makeNoFitTable } from "./no-fit-table.ts";
import { settleStrip } from "./settle-strip.ts";
import { type SearchPlan, shortenStrip } from "./shorten-strip.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** How hard to search: `quick` in every build, `full` when asked. */
export type Effort = "quick" | "full";

const samples = { anywhere: 30, nearby: 20, touching: 30, descents: 3 } as const;

/** Work allowed at each effort: `quick` takes about a second for forty pieces, `full` about twenty. */
export const searchPlans: Readonly<Record<Effort, SearchPlan>> = {
  quick: { budget: 8e6, samples, patience: 15, tries: 2, seed: 1 },
  full: { budget: 160e6, samples, patience: 40, tries: 5, seed: 1 },
};

/** Lay all items of a job on the shortest strip found. The same job gives the same strip. */
export function packStrip(job: StripJob, effort: Effort): Strip {
  const table = makeNoFitTable(job.forms);
  const start = startStrip(job, table, effort);
  return shortenStrip(job, table, start, layBound(job), searchPlans[effort]);
}

/** The best of the bottom-left lays. */
export function startStrip(job: StripJob, table: NoFitTable, effort: Effort): Strip {
  const orders = effort === "quick" ? layOrders(job).slice(0, 4) : layOrders(job);
  let best: Strip = { places: [], length: job.items.length === 0 ? 0 : Infinity };
  for (const order of orders) {
    const strip = fillBottomLeft(job, table, order);
    if (strip.length < best.length) best = strip;
  }
  return settleStrip(job, table, best);
}
