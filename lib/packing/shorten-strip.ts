import type { Count, Mm } from "../plane/types.ts";
import { disturbStrip, holdInside } from "./disturb-strip.ts";
import type { SampleCounts } from "./find-place.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import { pressStrip } from "./press-strip.ts";
import {
  type Places,
  type SearchState,
  keepPlaces,
  makeStrip,
  putBack,
  readPlaces,
  startSearch,
} from "./search-state.ts";
import { separateStrip } from "./separate-strip.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** How one trial searches. */
export interface TrialRules {
  readonly samples: SampleCounts;
  /** Rounds without gain before an arrangement is given up. */
  readonly patience: Count;
  /** Arrangements given up one after another before the trial ends. */
  readonly failures: Count;
}

/** Largest and smallest shortening tried, as shares of the length, and how it changes. */
const step = { most: 0.03, least: 0.005, grow: 1.3, shrink: 0.8 } as const;
/** Overlaps all together below this share of the length are worth pressing apart. */
const pressable = 0.1;
/** Failures are taken up again by rank: a share raised to this power, so that the best come first. */
const favour = 3;
/** A strip is shorter when it is so by this much. */
const shorterBy: Mm = 1e-6;

/** An arrangement that could not be parted, and the overlap that was left. */
interface Failure {
  readonly left: Mm;
  readonly places: Places;
}

/** One search for a short strip, which can be gone on with. */
export interface Trial {
  readonly table: NoFitTable;
  readonly rules: TrialRules;
  readonly state: SearchState;
  best: Strip;
  /** No strip can be shorter. */
  readonly least: Mm;
  /** Shortening tried at present. */
  share: number;
  failures: Failure[];
}

/** A trial that starts at a finished strip. The seed makes it different from other trials. */
export function startTrial(
  job: StripJob,
  table: NoFitTable,
  start: Strip,
  { least, seed, rules }: { least: Mm; seed: number; rules: TrialRules },
): Trial {
  const state = startSearch(job, table, start, seed);
  const trial = { table, rules, state, best: start, least, share: step.most, failures: [] };
  goOnFrom(trial, readPlaces(start));
  return trial;
}

/**
 * Shorten the strip of a trial by parting its items on a shorter length, until it has done `budget`
 * work. Whenever little overlap is left, the arrangement is pressed: that parts it wholly on some
 * length, and if that is the least so far the search goes on from there. An arrangement given up joins
 * the failures; one of the better failures is then tried again with two large items changed over.
 *
 * Bounded by work, never by the clock; never longer than before. Ends early at the least length.
 *
 * @source Gardeyn, Vanden Berghe and Wauters 2025, arXiv:2509.13329 (shrinking, failures kept by
 * rank, large items changed over); the pressing in place of their last phase is our choice
 */
export function shortenStrip(trial: Trial, budget: number): void {
  const { state, rules } = trial;
  const isEnough = (left: Mm, places: Places): boolean => takeIfShorter(trial, left, places);
  while (state.work < budget && !isSpent(trial)) {
    const before = trial.best.length;
    holdInside(state);
    const left = separateStrip(state, { ...rules, budget, isEnough });
    if (trial.best.length < before || takeIfShorter(trial, left, state)) {
      trial.failures = [];
      trial.share = Math.min(step.most, trial.share * step.grow);
      goOnFrom(trial, readPlaces(trial.best));
      continue;
    }
    trial.failures.push({ left, places: keepPlaces(state) });
    trial.failures.sort((a, b) => a.left - b.left);
    trial.share = Math.max(step.least, trial.share * step.shrink);
    const rank = Math.floor(trial.failures.length * state.random() ** favour);
    goOnFrom(trial, trial.failures[rank]!.places);
    disturbStrip(state);
  }
}

/** Whether going on with a trial would bring nothing. */
const isSpent = ({ best, least, failures, rules }: Trial): boolean =>
  failures.length >= rules.failures || best.length <= least * (1 + 1e-9);

const goOnFrom = ({ state, least, best, share }: Trial, places: Places): void =>
  putBack(state, places, Math.max(least, best.length * (1 - share)));

/** Press an arrangement with little overlap, and keep the strip if it is the shortest so far. */
function takeIfShorter(trial: Trial, left: Mm, places: Places): boolean {
  const { state, table, best } = trial;
  if (left > pressable * state.length) return false;
  const parted = makeStrip(state.job, places);
  const pressed = pressStrip(state.job, table, parted, best.length);
  state.work += pressed.work;
  const found = pressed.strip ?? (left === 0 ? parted : best);
  if (found.length > best.length - shorterBy) return false;
  trial.best = found;
  return true;
}
