import type { Count } from "../plane/types.ts";
import { type Random, seededRandom } from "../plane/random.ts";
import { bestPattern } from "./best-pattern.ts";
import { type KindPattern, type LengthKind, lengthShares } from "./length-shares.ts";

/** Stock of several lengths cut by patterns, and the least any plan can cost. */
export interface PackedSeveral {
  /** One for each piece of stock; null when none was found that cuts everything. */
  readonly patterns: readonly KindPattern[] | null;
  readonly cost: number;
  readonly costBound: number;
}

/** Times the shares are rounded to whole pieces anew. @source our choice */
const mostDives = 30;

/**
 * Cut lengths from stock of several lengths for the least cost: shares of patterns give the bound,
 * and rounding them step by step gives whole pieces. Capacities and sizes are whole numbers, sizes
 * all different, demand at least 1. The bound is raised to the next sum that prices can make.
 *
 * @source Gilmore and Gomory 1963; rounding after Wäscher and Gau 1996, "Heuristics for the integer
 * one-dimensional cutting stock problem", OR Spektrum 18
 */
export function packSeveral(
  kinds: readonly LengthKind[],
  sizes: readonly number[],
  demand: readonly Count[],
  known = Infinity,
): PackedSeveral {
  if (sizes.length === 0) return { patterns: [], cost: 0, costBound: 0 };
  const shares = lengthShares(kinds, sizes, demand);
  const least = shares.isProven && shares.isEnough ? shares.total : 0;
  const random = seededRandom(17);
  let patterns: readonly KindPattern[] | null = null;
  let cost = known;
  let costBound = nextSum(least, kinds, cost);
  for (let dive = 0; dive < mostDives && cost > costBound + 1e-9; dive++) {
    const found = roundShares(kinds, sizes, demand, dive === 0 ? null : random);
    if (found === null) continue;
    const total = found.reduce((sum, { kind }) => sum + kinds[kind]!.cost, 0);
    if (total >= cost - 1e-9) continue;
    [patterns, cost] = [found, total];
    costBound = nextSum(least, kinds, cost);
  }
  return { patterns, cost, costBound: Math.min(costBound, cost) };
}

/** Sums looked at before the plain bound is taken. */
const mostSums = 20_000;

/** The least sum of costs of whole pieces that is no smaller than a bound, and no larger than `most`. */
export function nextSum(least: number, kinds: readonly LengthKind[], most: number): number {
  const steps = [...new Set(kinds.map(({ cost }) => cost))].filter((cost) => cost > 1e-9);
  if (steps.length === 0 || least <= 1e-9 || !Number.isFinite(most)) return Math.max(0, least);
  const seen = new Set<number>([0]);
  const open = [0];
  let next = most;
  while (open.length > 0) {
    const sum = open.pop()!;
    for (const step of steps) {
      const to = Math.round((sum + step) * 1e6) / 1e6;
      if (to >= next - 1e-9 || seen.has(to)) continue;
      if (seen.size > mostSums) return least;
      seen.add(to);
      if (to >= least - 1e-6) next = to;
      else open.push(to);
    }
  }
  return next;
}

/** Fix whole pieces of the patterns with the largest shares and solve the rest again, until all is cut. */
function roundShares(
  kinds: readonly LengthKind[],
  sizes: readonly number[],
  demand: readonly Count[],
  random: Random | null,
): readonly KindPattern[] | null {
  const rest = [...demand];
  const left = kinds.map(({ most }) => most);
  const done: KindPattern[] = [];
  const fix = ({ kind, counts }: KindPattern): boolean => {
    const useful = counts.map((count, i) => Math.min(count, rest[i]!));
    if (left[kind]! < 1 || useful.every((count) => count === 0)) return false;
    useful.forEach((count, i) => (rest[i]! -= count));
    left[kind]! -= 1;
    done.push({ kind, counts: useful });
    return true;
  };
  while (rest.some((count) => count > 0)) {
    const kept = sizes.map((_, i) => i).filter((i) => rest[i]! > 0);
    const solved = lengthShares(
      kinds.map((kind, i) => ({ ...kind, most: left[i]! })),
      kept.map((i) => sizes[i]!),
      kept.map((i) => rest[i]!),
    );
    if (!solved.isEnough || solved.patterns.length === 0) return null;
    const wide = solved.patterns.map(({ kind, counts }): KindPattern => {
      const all = sizes.map(() => 0);
      kept.forEach((i, place) => (all[i] = counts[place]!));
      return { kind, counts: all };
    });
    let hasFixed = false;
    wide.forEach((pattern, i) => {
      for (let n = 0; n < Math.floor(solved.shares[i]! + 1e-6); n++) {
        hasFixed = fix(fillUp(kinds, sizes, pattern, rest)) || hasFixed;
      }
    });
    if (hasFixed) continue;
    const score = solved.shares.map((share) => share * (random === null ? 1 : 0.4 + random()));
    const chosen = wide[score.indexOf(Math.max(...score))]!;
    if (!fix(fillUp(kinds, sizes, chosen, rest))) return null;
  }
  return done;
}

/** The pattern with its waste filled by whatever of the rest fits best. */
function fillUp(
  kinds: readonly LengthKind[],
  sizes: readonly number[],
  { kind, counts }: KindPattern,
  rest: readonly Count[],
): KindPattern {
  const own = counts.map((count, i) => Math.min(count, rest[i]!));
  const used = own.reduce((sum, count, i) => sum + count * sizes[i]!, 0);
  const left = rest.map((count, i) => count - own[i]!);
  const more = bestPattern(kinds[kind]!.capacity - used, sizes, sizes, left).pattern;
  return { kind, counts: own.map((count, i) => count + more[i]!) };
}
