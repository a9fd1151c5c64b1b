import { fillBottomLeft } from "./fill-bottom-left.ts";
import { layOrders } from "./lay-orders.ts";
import { type NoFitTable, makeNoFitTable } from "./no-fit-table.ts";
import { settleStrip } from "./settle-strip.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** How hard to search: `quick` in every build, `full` when asked. */
export type Effort = "quick" | "full";

/** Lay all items of a job on the shortest strip found. The same job gives the same strip. */
export function packStrip(job: StripJob, effort: Effort): Strip {
  const table = makeNoFitTable(job.forms);
  return startStrip(job, table, effort);
}

/** The best of the bottom-left lays. */
export function startStrip(job: StripJob, table: NoFitTable, effort: Effort): Strip {
  let best: Strip = { places: [], length: job.items.length === 0 ? 0 : Infinity };
  const orders = effort === "quick" ? layOrders(job).slice(0, 4) : layOrders(job);
  for (const order of orders) {
    const strip = settleStrip(job, table, fillBottomLeft(job, table, order));
    if (strip.length < best.length) best = strip;
  }
  return best;
}
