import type { Count } from "../plane/types.ts";
import { type Pattern, bestPattern } from "./best-pattern.ts";

/** The fewest boards if patterns could be used in part: a bound for whole boards. */
export interface PatternShares {
  readonly patterns: readonly Pattern[];
  /** How much of each pattern is used. */
  readonly shares: readonly number[];
  readonly total: number;
  /** False when a pattern of more value may exist, so that `total` proves nothing. */
  readonly isProven: boolean;
}

/** Rounds of adding a pattern after which the shares are taken as they are. */
const mostRounds = 2000;

/**
 * Solve cutting stock in shares of patterns: a revised simplex whose entering pattern is the one of
 * most value at the present worth of each length. `pool` holds patterns known from before and grows.
 *
 * @source Gilmore and Gomory 1961, "A linear programming approach to the cutting-stock problem",
 * Operations Research 9
 */
export function patternShares(
  capacity: number,
  sizes: readonly number[],
  demand: readonly Count[],
  pool: Pattern[],
): PatternShares {
  const rows = sizes.length;
  let basis: Pattern[] = sizes.map((size, i) => {
    const most = Math.max(1, Math.min(demand[i]!, Math.floor(capacity / size)));
    return sizes.map((_, row) => (row === i ? most : 0));
  });
  let inverse = basis.map((pattern, i) => sizes.map((_, row) => (row === i ? 1 / pattern[i]! : 0)));
  let amounts = demand.map((count, i) => count / basis[i]![i]!);
  let isProven = false;
  for (let round = 0; round < mostRounds; round++) {
    const worth = sizes.map((_, row) => inverse.reduce((sum, line) => sum + line[row]!, 0));
    const entering = findEntering(capacity, sizes, demand, worth, pool);
    if (entering.pattern === null) {
      isProven = entering.isProven;
      break;
    }
    const column = inverse.map((line) => dotProduct(line, entering.pattern!));
    let leaving = -1;
    let step = Infinity;
    for (let i = 0; i < rows; i++) {
      if (column[i]! <= 1e-9) continue;
      const ratio = amounts[i]! / column[i]!;
      if (ratio < step - 1e-12) [leaving, step] = [i, ratio];
    }
    if (leaving < 0) break;
    const pivot = column[leaving]!;
    const line = inverse[leaving]!.map((each) => each / pivot);
    inverse = inverse.map((old, i) =>
      i === leaving ? line : old.map((each, j) => each - column[i]! * line[j]!),
    );
    amounts = amounts.map((each, i) => (i === leaving ? step : each - column[i]! * step));
    basis = basis.map((old, i) => (i === leaving ? entering.pattern! : old));
  }
  return { patterns: basis, shares: amounts, total: amounts.reduce((a, b) => a + b, 0), isProven };
}

const dotProduct = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, each, i) => sum + each * b[i]!, 0);

interface Entering {
  readonly pattern: Pattern | null;
  readonly isProven: boolean;
}

/** A pattern worth more than one board: first from the pool, then a new one. */
function findEntering(
  capacity: number,
  sizes: readonly number[],
  demand: readonly Count[],
  worth: readonly number[],
  pool: Pattern[],
): Entering {
  let known: Pattern | null = null;
  let most = 1 + 1e-7;
  for (const pattern of pool) {
    if (pattern.some((count, i) => count > demand[i]!)) continue;
    const value = dotProduct(worth, pattern);
    if (value > most) [known, most] = [pattern, value];
  }
  if (known !== null) return { pattern: known, isProven: true };
  const found = bestPattern(capacity, sizes, worth, demand);
  if (found.value <= 1 + 1e-7) return { pattern: null, isProven: found.isProven };
  pool.push(found.pattern);
  return { pattern: found.pattern, isProven: true };
}
