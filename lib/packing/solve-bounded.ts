import type { Count } from "../plane/types.ts";

/** A row Σ factor · variable ≥ least, over a few of the variables. */
export interface BoundedRow {
  readonly columns: readonly Count[];
  readonly factors: readonly number[];
  readonly least: number;
}

/** Minimise Σ cost · variable over rows, each variable between its two bounds. Costs are not negative. */
export interface BoundedProblem {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly cost: Float64Array;
  readonly rows: readonly BoundedRow[];
}

/** The values of least cost, null when there are none; and table entries gone through to find them. */
export interface BoundedAnswer {
  readonly values: Float64Array | null;
  readonly work: number;
}

/** Rows missed by less than this hold. */
const slack = 1e-9;
/** Pivots smaller than this are not trusted. */
const leastPivot = 1e-9;

/**
 * The values of least cost; none when no values hold every row, or `mostPivots` were not enough.
 *
 * All variables start at their low bound, which no cost is against; rows that do not hold are then
 * brought in one by one, the worst first.
 *
 * @source Lemke 1954, "The dual method of solving the linear programming problem"; bounds on
 * variables after Wagner 1958
 */
export function solveBounded(problem: BoundedProblem, mostPivots: Count): BoundedAnswer {
  const { rows, low, high } = problem;
  const width = low.length;
  const height = rows.length;
  const table = clearTable(height * width);
  const cost = problem.cost.slice();
  // What each column and each row stands for: a variable, or a row's surplus when ≥ width.
  const inColumn = Int32Array.from({ length: width }, (_, j) => j);
  const inRow = Int32Array.from({ length: height }, (_, i) => width + i);
  const isHigh = new Uint8Array(width);
  const value = new Float64Array(width + height);
  value.set(low);
  rows.forEach(({ columns, factors, least }, i) => {
    let sum = -least;
    columns.forEach((column, k) => {
      table[i * width + column]! += factors[k]!;
      sum += factors[k]! * low[column]!;
    });
    value[width + i] = sum;
  });
  const lowOf = (name: Count): number => (name < width ? low[name]! : 0);
  const highOf = (name: Count): number => (name < width ? high[name]! : Infinity);
  for (let pivots = 0; ; pivots++) {
    let worst = slack;
    let leaving = -1;
    let isBelow = true;
    for (let i = 0; i < height; i++) {
      const name = inRow[i]!;
      const at = value[name]!;
      const below = lowOf(name) - at;
      const above = at - highOf(name);
      if (below > worst) [worst, leaving, isBelow] = [below, i, true];
      if (above > worst) [worst, leaving, isBelow] = [above, i, false];
    }
    const work = (pivots + 1) * height * width;
    if (leaving < 0) return { values: value.slice(0, width), work };
    if (pivots >= mostPivots) return { values: null, work };
    const entering = chooseColumn(table, cost, isHigh, leaving * width, width, isBelow);
    if (entering < 0) return { values: null, work };
    const out = inRow[leaving]!;
    const goal = isBelow ? lowOf(out) : highOf(out);
    const step = (goal - value[out]!) / table[leaving * width + entering]!;
    for (let i = 0; i < height; i++) {
      const factor = table[i * width + entering]!;
      if (factor !== 0) value[inRow[i]!]! += factor * step;
    }
    value[out] = goal;
    value[inColumn[entering]!]! += step;
    exchange(table, cost, leaving, entering, width, height);
    inRow[leaving] = inColumn[entering]!;
    inColumn[entering] = out;
    isHigh[entering] = isBelow ? 0 : 1;
  }
}

/** One table serves all problems, one after another: making it anew costs more than solving. */
let shared = new Float64Array(0);

function clearTable(size: Count): Float64Array {
  if (shared.length < size) shared = new Float64Array(2 * size);
  return shared.fill(0, 0, size);
}

/** The column that mends a row at least cost, the larger factor among equals; −1 when none can. */
function chooseColumn(
  table: Float64Array,
  cost: Float64Array,
  isHigh: Uint8Array,
  row: Count,
  width: Count,
  isBelow: boolean,
): Count {
  let best = -1;
  let bestRatio = Infinity;
  let bestFactor = 0;
  for (let j = 0; j < width; j++) {
    const factor = table[row + j]!;
    if (factor < leastPivot && factor > -leastPivot) continue;
    const helps = factor > 0 === (isBelow === (isHigh[j] === 0));
    if (!helps) continue;
    const size = Math.abs(factor);
    const ratio = Math.abs(cost[j]!) / size;
    if (ratio < bestRatio - 1e-12 || (ratio < bestRatio + 1e-12 && size > bestFactor)) {
      [best, bestRatio, bestFactor] = [j, ratio, size];
    }
  }
  return best;
}

/** Change over what one row and one column stand for. */
function exchange(
  table: Float64Array,
  cost: Float64Array,
  leaving: Count,
  entering: Count,
  width: Count,
  height: Count,
): void {
  const row = leaving * width;
  const pivot = table[row + entering]!;
  // Columns with something in the row: the others do not change.
  const filled: Count[] = [];
  for (let j = 0; j < width; j++) {
    if (j === entering || table[row + j] === 0) continue;
    table[row + j]! /= -pivot;
    filled.push(j);
  }
  table[row + entering] = 1 / pivot;
  for (let i = 0; i < height; i++) {
    const start = i * width;
    const factor = table[start + entering]!;
    if (i === leaving || factor === 0) continue;
    for (let k = 0; k < filled.length; k++) {
      const j = filled[k]!;
      const sum = table[start + j]! + factor * table[row + j]!;
      table[start + j] = sum < 1e-13 && sum > -1e-13 ? 0 : sum;
    }
    table[start + entering] = factor / pivot;
  }
  const factor = cost[entering]!;
  if (factor === 0) return;
  for (const j of filled) cost[j]! += factor * table[row + j]!;
  cost[entering] = factor / pivot;
}
