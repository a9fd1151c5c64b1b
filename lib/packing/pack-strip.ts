import type { Count, Mm } from "../plane/types.ts";
import { coarsenJob } from "./coarsen-job.ts";
import { fillBottomLeft } from "./fill-bottom-left.ts";
import { layBound } from "./lay-bound.ts";
import { layOrders } from "./lay-orders.ts";
import { type NoFitTable, makeNoFitTable } from "./no-fit-table.ts";
import { pressStrip } from "./press-strip.ts";
import { settleStrip } from "./settle-strip.ts";
import { type Trial, type TrialRules, shortenStrip, startTrial } from "./shorten-strip.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** How hard to search: `quick` in every build, `full` when asked. */
export type Effort = "quick" | "full";

/** How hard to search: in each heat so many of the trials go on until each has done so much work. */
export interface SearchPlan {
  readonly rules: Omit<TrialRules, "failures">;
  /** Failures at which a trial ends: few items have few arrangements. */
  readonly failures: { readonly perItem: Count; readonly most: Count };
  /** With fewer items than this the work is less in proportion. */
  readonly fewItems: Count;
  readonly heats: readonly { readonly trials: Count; readonly until: number }[];
}

const samples = { anywhere: 10, nearby: 8, touching: 10, descents: 2 } as const;

const plans: Readonly<Record<Effort, SearchPlan>> = {
  quick: {
    rules: { samples, patience: 80 },
    failures: { perItem: 5, most: 60 },
    fewItems: 20,
    heats: [
      { trials: 3, until: 10e6 },
      { trials: 1, until: 40e6 },
    ],
  },
  full: {
    rules: { samples, patience: 80 },
    failures: { perItem: 25, most: 300 },
    fewItems: 1,
    heats: [
      { trials: 6, until: 60e6 },
      { trials: 3, until: 150e6 },
      { trials: 1, until: 400e6 },
    ],
  },
};

/** How hard to search at each effort: `quick` takes about a second, `full` less than twenty. */
export const searchPlan = (effort: Effort): SearchPlan => plans[effort];

/**
 * Lay all items of a job on the shortest strip found. The same job gives the same strip.
 *
 * Searches are lucky or not, so a full one begins several and goes on with those that did best.
 * Many-cornered outlines are searched with their shallow dents filled, and pressed together at the end
 * with their true ones.
 *
 * @source Karnin, Koren and Somekh 2013, "Almost optimal exploration in multi-armed bandits"
 * (sequential halving)
 */
export function packStrip(job: StripJob, effort: Effort, plan = searchPlan(effort)): Strip {
  const least = layBound(job);
  const table = makeNoFitTable(job.forms);
  const coarse = coarsenJob(job);
  if (coarse === null) return settleStrip(job, table, searchStrip(job, table, least, plan));
  const found = searchStrip(coarse, makeNoFitTable(coarse.forms), least, plan);
  const pressed = pressStrip(job, table, found, found.length).strip ?? found;
  return pressed.length < found.length ? pressed : found;
}

/** Search in heats; the best strip of all. */
function searchStrip(job: StripJob, table: NoFitTable, least: Mm, plan: SearchPlan): Strip {
  const start = startStrip(job, table);
  const failures = Math.min(plan.failures.most, plan.failures.perItem * job.items.length);
  const share = Math.min(1, job.items.length / plan.fewItems);
  const rules = { ...plan.rules, failures };
  let trials = Array.from({ length: plan.heats[0]?.trials ?? 0 }, (_, i) =>
    startTrial(job, table, start, { least, seed: i + 1, rules }),
  );
  for (const heat of plan.heats) {
    trials = trials.slice(0, heat.trials);
    for (const trial of trials) shortenStrip(trial, share * heat.until);
    trials.sort(shortestFirst);
  }
  return trials[0]?.best ?? start;
}

const shortestFirst = (a: Trial, b: Trial): number => a.best.length - b.best.length;

/** The best of the bottom-left lays. */
export function startStrip(job: StripJob, table: NoFitTable): Strip {
  let best: Strip = { places: [], length: Infinity };
  for (const order of layOrders(job)) {
    best = fillBottomLeft(job, table, order, best.length) ?? best;
  }
  return best;
}
