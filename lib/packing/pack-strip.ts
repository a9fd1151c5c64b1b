import type { Count } from "../plane/types.ts";
import { fillBottomLeft } from "./fill-bottom-left.ts";
import { layBound } from "./lay-bound.ts";
import { layOrders } from "./lay-orders.ts";
import { type NoFitTable, makeNoFitTable } from "./no-fit-table.ts";
import { settleStrip } from "./settle-strip.ts";
import { type SearchPlan, shortenStrip } from "./shorten-strip.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** How hard to search: `quick` in every build, `full` when asked. */
export type Effort = "quick" | "full";

const samples = { anywhere: 10, nearby: 8, touching: 10, descents: 2 } as const;

/**
 * How hard to search at each effort: `quick` takes about a second for forty pieces, `full` about
 * twenty. Few pieces need far less: work grows with the square of their number up to a limit.
 */
export function searchPlan(effort: Effort, items: Count): SearchPlan {
  switch (effort) {
    case "quick":
      return {
        budget: Math.min(60e6, 40e3 * items ** 2),
        samples,
        patience: 15,
        tries: 2,
        seed: 1,
      };
    case "full":
      return {
        budget: Math.min(900e6, 1.2e6 * items ** 2),
        samples,
        patience: 40,
        tries: 5,
        seed: 1,
      };
  }
}

/** Lay all items of a job on the shortest strip found. The same job gives the same strip. */
export function packStrip(job: StripJob, effort: Effort): Strip {
  const table = makeNoFitTable(job.forms);
  const start = startStrip(job, table);
  return shortenStrip(job, table, start, layBound(job), searchPlan(effort, job.items.length));
}

/** The best of the bottom-left lays. */
export function startStrip(job: StripJob, table: NoFitTable): Strip {
  let best: Strip = { places: [], length: job.items.length === 0 ? 0 : Infinity };
  for (const order of layOrders(job)) {
    const strip = fillBottomLeft(job, table, order);
    if (strip.length < best.length) best = strip;
  }
  return settleStrip(job, table, best);
}
