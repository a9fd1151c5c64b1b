import type { Count } from "../plane/types.ts";
import { type Pattern, bestPattern } from "./best-pattern.ts";
import { fillTight } from "./fill-tight.ts";
import { patternShares } from "./pattern-bound.ts";
import { type Random, seededRandom } from "../plane/random.ts";

/** Boards cut by patterns, one pattern a board, and the fewest boards any plan can use. */
export interface PackedLengths {
  readonly patterns: readonly Pattern[];
  readonly lowerBound: Count;
}

/** Times the patterns are rounded to whole boards anew. */
const mostDives = 40;
/** Dives after which boards are filled one by one with as little waste as can be. */
const divesBeforeTight = 4;

/**
 * Cut lengths from as few equal boards as can be: patterns in shares give the bound, and rounding
 * the shares step by step gives whole boards; first-fit decreasing is the plan to beat. Sizes and
 * the capacity are whole numbers, the sizes all different and none above the capacity, demand at
 * least 1.
 *
 * @source Gilmore and Gomory 1961; rounding after Wäscher and Gau 1996, "Heuristics for the integer
 * one-dimensional cutting stock problem", OR Spektrum 18
 */
export function packLengths(
  capacity: number,
  sizes: readonly number[],
  demand: readonly Count[],
  dives = mostDives,
): PackedLengths {
  if (sizes.length === 0) return { patterns: [], lowerBound: 0 };
  let best = firstFit(capacity, sizes, demand);
  const bulk = sizes.reduce((sum, size, i) => sum + size * demand[i]!, 0);
  let lowerBound = Math.max(Math.ceil(bulk / capacity), countHalves(capacity, sizes, demand));
  if (best.length === lowerBound) return { patterns: best, lowerBound };
  const pool: Pattern[] = [];
  const shares = patternShares(capacity, sizes, demand, pool);
  if (shares.isProven) lowerBound = Math.max(lowerBound, Math.ceil(shares.total - 1e-6));
  const random = seededRandom(11);
  for (let dive = 0; dive < dives && best.length > lowerBound; dive++) {
    const found = roundShares(
      capacity,
      sizes,
      demand,
      pool,
      dive === 0 ? null : random,
      best.length,
    );
    if (found !== null && found.length < best.length) best = found;
    if (dive !== divesBeforeTight || best.length !== lowerBound + 1) continue;
    best = fillTight(capacity, sizes, demand, lowerBound) ?? best;
  }
  return { patterns: best, lowerBound };
}

/** Items longer than half a board lie one to a board. */
const countHalves = (capacity: number, sizes: readonly number[], demand: readonly Count[]): Count =>
  sizes.reduce((sum, size, i) => sum + (2 * size > capacity ? demand[i]! : 0), 0);

/** Each length, longest first, on the first board that still has room for it. */
export function firstFit(
  capacity: number,
  sizes: readonly number[],
  demand: readonly Count[],
): readonly Pattern[] {
  const boards: { room: number; counts: number[] }[] = [];
  const order = sizes.map((_, i) => i).sort((a, b) => sizes[b]! - sizes[a]!);
  for (const i of order) {
    for (let n = 0; n < demand[i]!; n++) {
      let board = boards.find(({ room }) => room >= sizes[i]!);
      if (board === undefined) {
        board = { room: capacity, counts: sizes.map(() => 0) };
        boards.push(board);
      }
      board.room -= sizes[i]!;
      board.counts[i]! += 1;
    }
  }
  return boards.map(({ counts }) => counts);
}

/**
 * Fix whole boards of the patterns with the largest shares, then solve the rest again, until all is
 * cut. Null as soon as it cannot beat `most`.
 */
function roundShares(
  capacity: number,
  sizes: readonly number[],
  demand: readonly Count[],
  pool: Pattern[],
  random: Random | null,
  most: Count,
): readonly Pattern[] | null {
  const rest = [...demand];
  const boards: Pattern[] = [];
  const fix = (pattern: Pattern, times: Count): void => {
    for (let n = 0; n < times; n++) {
      const useful = pattern.map((count, i) => Math.min(count, rest[i]!));
      if (useful.every((count) => count === 0)) return;
      useful.forEach((count, i) => (rest[i]! -= count));
      boards.push(useful);
    }
  };
  while (rest.some((count) => count > 0)) {
    const kept = sizes.map((_, i) => i).filter((i) => rest[i]! > 0);
    const ownPool = pool.map((pattern) => kept.map((i) => pattern[i]!));
    const solved = patternShares(
      capacity,
      kept.map((i) => sizes[i]!),
      kept.map((i) => rest[i]!),
      ownPool,
    );
    if (boards.length + Math.ceil(solved.total - 1e-6) >= most) return null;
    const widen = (pattern: Pattern): Pattern => {
      const wide = sizes.map(() => 0);
      kept.forEach((i, place) => (wide[i] = pattern[place]!));
      return wide;
    };
    for (const pattern of ownPool.slice(pool.length)) pool.push(widen(pattern));
    const whole = solved.shares.map((share) => Math.floor(share + 1e-6));
    if (whole.some((count) => count > 0)) {
      solved.patterns.forEach((pattern, i) =>
        fix(fillUp(capacity, sizes, widen(pattern), rest), whole[i]!),
      );
      continue;
    }
    const score = solved.shares.map((share) => share * (random === null ? 1 : 0.5 + random()));
    const chosen = score.indexOf(Math.max(...score));
    fix(fillUp(capacity, sizes, widen(solved.patterns[chosen]!), rest), 1);
  }
  return boards.length < most ? boards : null;
}

/** The pattern with its waste filled by whatever of the rest fits best. */
function fillUp(
  capacity: number,
  sizes: readonly number[],
  pattern: Pattern,
  rest: readonly Count[],
): Pattern {
  const own = pattern.map((count, i) => Math.min(count, rest[i]!));
  const room = capacity - own.reduce((sum, count, i) => sum + count * sizes[i]!, 0);
  const left = rest.map((count, i) => count - own[i]!);
  const more = bestPattern(room, sizes, sizes, left).pattern;
  return own.map((count, i) => count + more[i]!);
}
