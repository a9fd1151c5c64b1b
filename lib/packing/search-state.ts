import type { Count, Mm } from "../plane/types.ts";
import { type Random, seededRandom } from "../plane/random.ts";
import { stripLength } from "./clear-place.ts";
import type { NoFit } from "./no-fit.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import type { Strip, StripJob } from "./strip-types.ts";
import type { Surroundings } from "./surroundings.ts";

/** Where all items lie. */
export interface Places {
  readonly form: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/**
 * Where all items lie while they are being parted, in arrays for speed. Items may overlap here, but
 * never hang off the strip of the present length.
 */
export interface SearchState extends Places {
  readonly job: StripJob;
  readonly count: Count;
  /** Depth of the overlap of two items, row of one, column of other; on the diagonal, across a wall. */
  readonly depth: Float64Array;
  /** How much each of these counts; grows while it lasts. */
  readonly weight: Float64Array;
  /** How much lying across a wall counts, for each item. */
  readonly wallWeight: Float64Array;
  readonly formWidth: Float64Array;
  readonly formHeight: Float64Array;
  /** Fourth root of each item's area: two of them multiplied grow like a length. */
  readonly bulk: Float64Array;
  /** No-fit region of a form (column) round another (row), found on first use. */
  readonly region: (fixed: Count, moving: Count) => NoFit;
  readonly random: Random;
  /** What the item at hand sees, one for each of its forms; filled anew for every item. */
  readonly scratch: Surroundings[];
  /** Work of looking round, of testing a place among all items, and among those near it. */
  readonly lookWork: number;
  readonly testWork: number;
  readonly nearWork: number;
  length: Mm;
  /** Work done so far: about a hundred million to the second. The budget is counted in it. */
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
  // Corners to look at, and the wait for regions that lie far apart in memory.
  const perDepth = meanCorners(job) + size / 3;
  const state: SearchState = {
    job,
    count,
    form: new Int32Array(count),
    x: new Float64Array(count),
    y: new Float64Array(count),
    depth: new Float64Array(count * count),
    weight: new Float64Array(count * count).fill(1),
    wallWeight: new Float64Array(count).fill(1),
    formWidth: Float64Array.from(job.forms, (form) => form.width),
    formHeight: Float64Array.from(job.forms, (form) => form.height),
    bulk: Float64Array.from(job.items, (item) => Math.sqrt(Math.sqrt(item.area))),
    region: (fixed, moving) => (regions[fixed * size + moving] ??= table(fixed, moving)),
    random: seededRandom(seed),
    scratch: [],
    lookWork: 40 + 5 * count,
    testWork: 20 + count / 4 + perDepth,
    nearWork: 20 + perDepth,
    length: strip.length,
    work: 0,
  };
  putBack(state, readPlaces(strip), strip.length);
  return state;
}

function meanCorners({ items, forms }: StripJob): number {
  const corners = items.map((item) => forms[item.forms[0]!]!.polygon.length);
  return corners.reduce((sum, each) => sum + each, 0) / Math.max(1, corners.length);
}

/** A copy of where all items lie now. */
export const keepPlaces = ({ form, x, y }: Places): Places => ({
  form: form.slice(),
  x: x.slice(),
  y: y.slice(),
});

/** Put all items where they were, on a strip of some length. */
export function putBack(state: SearchState, { form, x, y }: Places, length: Mm): void {
  state.form.set(form);
  state.x.set(x);
  state.y.set(y);
  state.length = length;
}

/** Where a strip has its items. */
export const readPlaces = ({ places }: Strip): Places => ({
  form: Int32Array.from(places, (place) => place.form),
  x: Float64Array.from(places, (place) => place.x),
  y: Float64Array.from(places, (place) => place.y),
});

/** Places as a strip. */
export function makeStrip(job: StripJob, { form, x, y }: Places): Strip {
  const places = Array.from(form, (each, i) => ({ form: each, x: x[i]!, y: y[i]! }));
  return { places, length: stripLength(job, places) };
}
