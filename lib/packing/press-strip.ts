import type { Count, Mm } from "../plane/types.ts";
import { crossesNoWall, stripLength } from "./clear-place.ts";
import { listLines } from "./list-lines.ts";
import { noFitDepth, touching } from "./no-fit-depth.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import { type BoundedProblem, type BoundedRow, solveBounded } from "./solve-bounded.ts";
import type { Strip, StripJob, StripPlace } from "./strip-types.ts";

/** A pressed strip, null when its overlaps cannot be parted; and the work that took. */
export interface Pressed {
  readonly strip: Strip | null;
  readonly work: number;
}

const mostRounds = 12;
/** A round that gains less than this share of the length is the last. */
const leastGain = 1e-5;
/** A press still longer than its goal by this factor is left as it is. */
const hopeful = 1.015;
/** Pieces may move this share of their mean size each way in one round. */
const reachShare = 0.1;
/** Work of the search that takes as long as one table entry of the solver. */
const entryWork = 0.05;

/**
 * Press a lay together: move all pieces at once, none over another, so that the strip becomes as
 * short as it can while each pair keeps the side it has. Small overlaps are parted, even if the strip
 * grows. Turns and flips stay, and so do pieces that must start at a repeat.
 *
 * @source Li and Milenkovic 1995, "Compaction and separation algorithms for non-convex polygons and
 * their applications", EJOR 84
 */
export function pressStrip(job: StripJob, table: NoFitTable, strip: Strip, goal: Mm): Pressed {
  let best: Strip | null = null;
  let { places } = strip;
  let work = 0;
  const size = Math.sqrt(job.items.reduce((sum, { area }) => sum + area, 0) / job.items.length);
  for (let round = 0; round < mostRounds; round++) {
    const problem = stateProblem(job, table, places, reachShare * size);
    const { values, work: entries } = solveBounded(problem, 20 * places.length + 200);
    work += entryWork * entries;
    if (values === null) break;
    places = places.map(({ form }, i) => ({ form, x: values[2 * i]!, y: values[2 * i + 1]! }));
    const length = stripLength(job, places);
    if (!isClear(job, table, places) || length > (best?.length ?? Infinity)) break;
    const isLast = best !== null && length > best.length * (1 - leastGain);
    best = { places, length };
    if (isLast || length > goal * hopeful) break;
  }
  return { strip: best, work };
}

/** Cost of lying far out, beside the cost 1 of length: it only chooses among equals. */
const pull = 1e-7;

/**
 * The linear programme of one round: x and y of each piece in turn, then the length. Pieces move no
 * farther than `reach`, across and along.
 */
function stateProblem(
  job: StripJob,
  table: NoFitTable,
  places: readonly StripPlace[],
  reach: Mm,
): BoundedProblem {
  const count = places.length;
  const low = new Float64Array(2 * count + 1);
  const high = new Float64Array(2 * count + 1).fill(Infinity);
  const cost = new Float64Array(2 * count + 1).fill(pull);
  const rows: BoundedRow[] = [];
  cost[2 * count] = 1;
  places.forEach(({ form, x, y }, i) => {
    const { width, height } = job.forms[form]!;
    const { stepX, stepY } = job.items[i]!;
    const room = Math.max(0, job.width - width);
    const [floor, ceiling] = storeyAt(job, y + height / 2);
    low[2 * i] = stepX > 0 ? x : Math.min(Math.max(0, x - reach), room);
    high[2 * i] = stepX > 0 ? x : Math.min(room, x + reach);
    low[2 * i + 1] = stepY > 0 ? y : Math.max(floor, Math.min(y - reach, ceiling - height));
    high[2 * i + 1] = stepY > 0 ? y : Math.max(floor, Math.min(y + reach, ceiling - height));
    rows.push({ columns: [2 * count, 2 * i + 1], factors: [1, -1], least: height });
  });
  listLines(table, places, 2 * reach, ({ i, j, nx, ny, least }) =>
    rows.push({
      columns: [2 * j, 2 * j + 1, 2 * i, 2 * i + 1],
      factors: [nx, ny, -nx, -ny],
      least,
    }),
  );
  return { low, high, cost, rows };
}

/** The walls below and above a height. */
const storeyAt = ({ walls }: StripJob, y: Mm): readonly [Mm, Mm] => [
  Math.max(0, ...walls.filter((wall) => wall < y)),
  Math.min(Infinity, ...walls.filter((wall) => wall >= y)),
];

/** Whether no two pieces overlap and none lies across a wall. */
function isClear(job: StripJob, table: NoFitTable, places: readonly StripPlace[]): boolean {
  const isApart = (i: Count, j: Count): boolean => {
    const [one, two] = [places[i]!, places[j]!];
    return noFitDepth(table(two.form, one.form), one.x - two.x, one.y - two.y) <= touching;
  };
  return places.every(({ form, y }, i) => {
    if (!crossesNoWall(job, form, y)) return false;
    for (let j = 0; j < i; j++) if (!isApart(i, j)) return false;
    return true;
  });
}
