import type { Count } from "../plane/types.ts";
import { type Pattern, bestPattern } from "./best-pattern.ts";

/** One length of stock: any number at its cost, or no more than `most`. */
export interface LengthKind {
  /** A whole number, as the sizes to cut are. */
  readonly capacity: number;
  readonly cost: number;
  /** How many there are, Infinity where it is sold. */
  readonly most: number;
}

/** A pattern and the kind of stock it is cut from. */
export interface KindPattern {
  readonly kind: Count;
  readonly counts: Pattern;
}

export interface LengthShares {
  readonly patterns: readonly KindPattern[];
  /** How much of each pattern is used. */
  readonly shares: readonly number[];
  /** What they cost together: no plan of whole pieces costs less, where `isProven`. */
  readonly total: number;
  readonly isProven: boolean;
  /** False when the stock does not hold everything even in shares. */
  readonly isEnough: boolean;
}

/** Column of the simplex table: a pattern of some kind, a spare piece on hand, or what is missing. */
interface Column {
  readonly pattern: KindPattern | null;
  readonly cost: number;
  readonly entries: readonly number[];
}

const mostRounds = 2000;
/** A missing piece costs so much more than any stock. */
const missingCost = 1e7;

/**
 * Solve cutting stock over several lengths of stock in shares of patterns: a revised simplex with one
 * row for each size to cut and one for each kind of which there are only so many; the entering column
 * is the pattern of most worth over all kinds.
 *
 * @source Gilmore and Gomory 1963, "A linear programming approach to the cutting stock problem, part
 * II", Operations Research 11 (several stock lengths)
 */
export function lengthShares(
  kinds: readonly LengthKind[],
  sizes: readonly number[],
  demand: readonly Count[],
): LengthShares {
  const limited = kinds.flatMap((kind, i) => (Number.isFinite(kind.most) ? [i] : []));
  const rows = sizes.length + limited.length;
  const unit = (row: Count): number[] =>
    Array.from({ length: rows }, (_, i) => (i === row ? 1 : 0));
  let basis: Column[] = Array.from({ length: rows }, (_, row) => ({
    pattern: null,
    cost: row < sizes.length ? missingCost : 0,
    entries: unit(row),
  }));
  let inverse = basis.map(({ entries }) => [...entries]);
  let amounts = [...demand, ...limited.map((kind) => kinds[kind]!.most)];
  let isProven = false;
  for (let round = 0; round < mostRounds; round++) {
    const worth = unit(0).map((_, row) =>
      inverse.reduce((sum, line, i) => sum + basis[i]!.cost * line[row]!, 0),
    );
    const entering = findEntering({ kinds, limited, sizes, demand, rows }, worth);
    if (entering.column === null) {
      isProven = entering.isProven;
      break;
    }
    const column = inverse.map((line) => dotProduct(line, entering.column!.entries));
    const leaving = findLeaving(column, amounts);
    if (leaving < 0) break;
    const step = amounts[leaving]! / column[leaving]!;
    const line = inverse[leaving]!.map((each) => each / column[leaving]!);
    inverse = inverse.map((old, i) =>
      i === leaving ? line : old.map((each, j) => each - column[i]! * line[j]!),
    );
    amounts = amounts.map((each, i) => (i === leaving ? step : each - column[i]! * step));
    basis = basis.map((old, i) => (i === leaving ? entering.column! : old));
  }
  const cut = basis.flatMap(({ pattern }, i) => (pattern === null ? [] : [{ pattern, i }]));
  const missing = basis.reduce(
    (sum, { cost }, i) => sum + (cost === missingCost ? amounts[i]! : 0),
    0,
  );
  return {
    patterns: cut.map(({ pattern }) => pattern),
    shares: cut.map(({ i }) => amounts[i]!),
    total: cut.reduce((sum, { i }) => sum + amounts[i]! * basis[i]!.cost, 0),
    isProven,
    isEnough: missing < 1e-6,
  };
}

const dotProduct = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, each, i) => sum + each * b[i]!, 0);

/** The row that reaches zero first; −1 for none. */
function findLeaving(column: readonly number[], amounts: readonly number[]): Count {
  let leaving = -1;
  let step = Infinity;
  column.forEach((each, i) => {
    if (each <= 1e-9) return;
    const ratio = amounts[i]! / each;
    if (ratio < step - 1e-12) [leaving, step] = [i, ratio];
  });
  return leaving;
}

interface Setting {
  readonly kinds: readonly LengthKind[];
  readonly limited: readonly Count[];
  readonly sizes: readonly number[];
  readonly demand: readonly Count[];
  readonly rows: Count;
}

/** The column that saves most: a pattern of some kind, or a piece on hand left spare. */
function findEntering(
  { kinds, limited, sizes, demand, rows }: Setting,
  worth: readonly number[],
): { readonly column: Column | null; readonly isProven: boolean } {
  let column: Column | null = null;
  let saves = 1e-7;
  let isProven = true;
  kinds.forEach(({ capacity, cost }, kind) => {
    const row = limited.indexOf(kind);
    const price = cost - (row < 0 ? 0 : worth[sizes.length + row]!);
    const found = bestPattern(capacity, sizes, worth.slice(0, sizes.length), demand);
    isProven &&= found.isProven;
    if (found.value - price <= saves) return;
    saves = found.value - price;
    const entries = Array.from({ length: rows }, (_, i) => {
      if (i < sizes.length) return found.pattern[i]!;
      return i - sizes.length === row ? 1 : 0;
    });
    column = { pattern: { kind, counts: found.pattern }, cost, entries };
  });
  limited.forEach((_, i) => {
    const row = sizes.length + i;
    if (worth[row]! <= saves) return;
    saves = worth[row]!;
    const entries = Array.from({ length: rows }, (_, j) => (j === row ? 1 : 0));
    column = { pattern: null, cost: 0, entries };
  });
  return { column, isProven: isProven || column !== null };
}
