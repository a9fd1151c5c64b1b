import type { Count, Mm } from "../plane/types.ts";
import { stripLength } from "./clear-place.ts";
import type { NoFit } from "./no-fit.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import { type Random, seededRandom } from "../plane/random.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/**
 * Where all items lie while they are being parted, in arrays for speed. Items may overlap here, but
 * never hang off the strip of the present length.
 */
export interface SearchState {
  readonly job: StripJob;
  readonly count: Count;
  readonly form: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** How much an overlap of two items counts; grows while it lasts. Row of one, column of other. */
  readonly weight: Float64Array;
  /** How much lying across a wall counts, for each item. */
  readonly wallWeight: Float64Array;
  readonly formWidth: Float64Array;
  readonly formHeight: Float64Array;
  /** Fourth root of each item's area: two of them multiplied grow like a length. */
  readonly bulk: Float64Array;
  /** Work of one overlap test: looking at every other item, and the corners of a few. */
  readonly testWork: number;
  /** No-fit region of a form (column) round another (row), found on first use. */
  readonly region: (fixed: Count, moving: Count) => NoFit;
  readonly random: Random;
  length: Mm;
  /** Overlap tests done so far: the budget is counted in these. */
  work: number;
}

/** The state of a search that starts at a finished strip. */
export function startSearch(
  job: StripJob,
  table: NoFitTable,
  strip: Strip,
  seed: number,
): SearchState {
  const count = job.items.length;
  const size = job.forms.length;
  const regions: (NoFit | undefined)[] = Array.from({ length: size * size });
  const state: SearchState = {
    job,
    count,
    form: new Int32Array(count),
    x: new Float64Array(count),
    y: new Float64Array(count),
    weight: new Float64Array(count * count).fill(1),
    wallWeight: new Float64Array(count).fill(1),
    formWidth: Float64Array.from(job.forms, (form) => form.width),
    formHeight: Float64Array.from(job.forms, (form) => form.height),
    bulk: Float64Array.from(job.items, (item) => Math.sqrt(Math.sqrt(item.area))),
    testWork: count + 10 + 2 * meanCorners(job),
    region: (fixed, moving) => (regions[fixed * size + moving] ??= table(fixed, moving)),
    random: seededRandom(seed),
    length: strip.length,
    work: 0,
  };
  restore(state, strip);
  return state;
}

function meanCorners({ items, forms }: StripJob): number {
  const corners = items.map((item) => forms[item.forms[0]!]!.polygon.length);
  return corners.reduce((sum, each) => sum + each, 0) / Math.max(1, corners.length);
}

/** Put all items where a strip has them. */
export function restore(state: SearchState, strip: Strip): void {
  strip.places.forEach(({ form, x, y }, i) => {
    state.form[i] = form;
    state.x[i] = x;
    state.y[i] = y;
  });
  state.length = strip.length;
}

/** The strip as the state has it. */
export function readStrip(state: SearchState): Strip {
  const places = Array.from({ length: state.count }, (_, i) => ({
    form: state.form[i]!,
    x: state.x[i]!,
    y: state.y[i]!,
  }));
  return { places, length: stripLength(state.job, places) };
}
