import type { Count } from "../plane/types.ts";
import { costToBuy } from "./cut-bound.ts";
import { type CutJob, content } from "./cut-job.ts";
import type { Layering } from "./list-layerings.ts";
import { type PackedCuts, packCuts } from "./pack-cuts.ts";

/** A job cut up, and how many copies are glued up by each layering. */
export interface LayeredCuts {
  readonly job: CutJob;
  readonly packed: PackedCuts;
  readonly counts: readonly Count[];
}

/** All choices are tried up to so many; of more, the copies of one layering after another. */
const mostChoices: Count = 64;
/** Fills tried for each choice where the search is not exact. */
const choiceTries: Count = 60;

/**
 * Cut a job up, and where stock has to be bought, find out whether gluing parts up from what is on
 * hand buys less. Of all that buy least, the plan with the fewest glued parts is taken.
 *
 * The bound on what must be bought holds for every choice of layerings.
 */
export function saveByLayers(
  layerings: readonly Layering[],
  makeJob: (counts: readonly Count[]) => CutJob,
  tries?: Count,
): LayeredCuts {
  const none = layerings.map(() => 0);
  const job = makeJob(none);
  const packed = packCuts(job, tries);
  const whole = { job, packed, counts: none };
  if (layerings.length === 0 || packed.cost <= nothing) return whole;
  const choices = listChoices(layerings);
  const least = costToBuy(job);
  if (packed.cost <= least + nothing) return whole;
  return choices === null
    ? withBound(glueAsNeeded(layerings, makeJob, whole), least)
    : tryAll(choices, makeJob, whole);
}

const nothing = 1e-9;

/** Every choice of counts, the fewest glued parts first; null where there are too many. */
function listChoices(layerings: readonly Layering[]): readonly (readonly Count[])[] | null {
  let choices: (readonly Count[])[] = [[]];
  for (const { part, copies } of layerings) {
    choices = choices.flatMap((counts) => {
      const taken = counts.reduce((sum, n, j) => (layerings[j]!.part === part ? sum + n : sum), 0);
      return Array.from({ length: copies - taken + 1 }, (_, n) => [...counts, n]);
    });
    if (choices.length > mostChoices) return null;
  }
  const glued = (counts: readonly Count[]): Count =>
    counts.reduce((sum, n, i) => sum + n * (layerings[i]!.division.length - 1), 0);
  return choices.toSorted((a, b) => glued(a) - glued(b)).slice(1);
}

function tryAll(
  choices: readonly (readonly Count[])[],
  makeJob: (counts: readonly Count[]) => CutJob,
  whole: LayeredCuts,
): LayeredCuts {
  let best = whole;
  let bound = whole.packed.costBound;
  for (const counts of choices) {
    const job = makeJob(counts);
    if (costToBuy(job) >= best.packed.cost - nothing) continue;
    const packed = packCuts(job, choiceTries);
    bound = Math.min(bound, packed.costBound);
    if (packed.cost < best.packed.cost - nothing) best = { job, packed, counts };
    if (best.packed.cost <= nothing) break;
  }
  return withBound(best, Math.min(bound, best.packed.cost));
}

/** Glue up all copies that can be, one layering after another, then as few as still save as much. */
function glueAsNeeded(
  layerings: readonly Layering[],
  makeJob: (counts: readonly Count[]) => CutJob,
  whole: LayeredCuts,
): LayeredCuts {
  let best = whole;
  const tryCounts = (counts: readonly Count[]): LayeredCuts => {
    const job = makeJob(counts);
    return { job, packed: packCuts(job, choiceTries), counts };
  };
  for (const [i, { part, copies }] of layerings.entries()) {
    const taken = best.counts.reduce(
      (sum, n, j) => (layerings[j]!.part === part ? sum + n : sum),
      0,
    );
    const all = tryCounts(best.counts.with(i, copies - taken));
    if (all.packed.cost < best.packed.cost - nothing) best = all;
  }
  for (const [i] of layerings.entries()) {
    let low = -1;
    while (best.counts[i]! - low > 1) {
      const middle = Math.floor((low + best.counts[i]!) / 2);
      const fewer = tryCounts(best.counts.with(i, middle));
      if (fewer.packed.cost <= best.packed.cost + nothing) best = fewer;
      else low = middle;
    }
  }
  return best;
}

/** The plan with bounds that hold however parts are glued up. */
function withBound({ job, packed, counts }: LayeredCuts, costBound: number): LayeredCuts {
  const largest = Math.max(...job.stocks.map(({ size }) => content(size)));
  const bulk = job.items.reduce((sum, { ways }) => sum + content(ways[0]!), 0);
  return {
    job,
    counts,
    packed: {
      ...packed,
      costBound,
      lowerBound: Math.min(packed.lowerBound, Math.ceil(bulk / largest - nothing)),
      isProven: packed.cost <= costBound + nothing,
    },
  };
}
