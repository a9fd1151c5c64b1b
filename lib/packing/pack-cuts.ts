import type { Count } from "../plane/types.ts";
import { arrangeExact } from "./arrange-exact.ts";
import { chooseStock } from "./choose-stock.ts";
import { cutBound } from "./cut-bound.ts";
import { type CutBin, type CutJob, type CutTree, content } from "./cut-job.ts";
import { type FitRule, fillGreedy } from "./fill-greedy.ts";
import { randomBelow, seededRandom } from "../plane/random.ts";

/** Stock cut up, and the fewest pieces of stock any plan could use. */
export interface PackedCuts {
  readonly bins: readonly CutBin[];
  /** Of all kinds together. */
  readonly lowerBound: Count;
  /** True when no plan is cheaper. */
  readonly isProven: boolean;
}

/** Joinings of blocks after which the exact search gives up. */
const exactBudget = 12_000_000;

const rules: readonly FitRule[] = ["tightest", "smallest", "fullest-side"];

/**
 * Cut all items of a job from as little bought stock as can be, then from as little stock on hand,
 * leaving large offcuts. Every item must fit some stock. Small jobs are exact and say so.
 */
export function packCuts(job: CutJob, tries = 300): PackedCuts {
  if (job.items.length === 0) return { bins: [], lowerBound: 0, isProven: true };
  const exact = findExact(job);
  const quick = findGreedy(job, tries);
  const bins = exact !== null && isCheaper(job, exact, quick) ? exact : quick;
  const isOneKind = job.stocks.length === 1;
  const lowerBound = exact !== null && isOneKind ? bins.length : cutBound(job);
  return { bins, lowerBound, isProven: exact !== null || bins.length === lowerBound };
}

function findExact(job: CutJob): readonly CutBin[] | null {
  const arrangements = job.items.length > 12 ? null : arrangeExact(job, exactBudget);
  return arrangements === null ? null : chooseStock(job, arrangements);
}

/** Many fills from orders that are shuffled a little, keeping the best. */
function findGreedy(job: CutJob, tries: Count): readonly CutBin[] {
  const random = seededRandom(1);
  const bulk = job.items.map((item) => content(item.ways[0]!));
  const longest = job.items.map((item) => Math.max(...item.ways[0]!));
  const sorted = (rank: readonly number[]): Count[] =>
    rank.map((_, index) => index).sort((a, b) => rank[b]! - rank[a]! || a - b);
  let best: readonly CutBin[] | null = null;
  let bestOrder: readonly Count[] = sorted(bulk);
  for (let attempt = 0; attempt < tries; attempt++) {
    const start = attempt < 12 ? sorted(attempt % 2 === 0 ? bulk : longest) : [...bestOrder];
    if (attempt >= 12) swapSome(start, random);
    const rule = rules[attempt % rules.length]!;
    const bins = fillGreedy(job, start, rule, Math.floor(attempt / 3) % 2 === 0);
    if (best !== null && !isCheaper(job, bins, best)) continue;
    [best, bestOrder] = [bins, start];
  }
  return best!;
}

function swapSome(order: Count[], random: () => number): void {
  const swaps = 1 + randomBelow(random, 3);
  for (let n = 0; n < swaps; n++) {
    const i = randomBelow(random, order.length);
    const j = randomBelow(random, order.length);
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
}

/**
 * Whether one plan buys for less than another; if equal, cuts less from bought stock, opens less of
 * what is on hand, or leaves larger offcuts.
 */
function isCheaper(job: CutJob, one: readonly CutBin[], two: readonly CutBin[]): boolean {
  const [a, b] = [scorePlan(job, one), scorePlan(job, two)];
  const decided = a.findIndex((score, i) => Math.abs(score - b[i]!) > 1e-9 * Math.abs(score));
  return decided >= 0 && a[decided]! < b[decided]!;
}

function scorePlan(job: CutJob, bins: readonly CutBin[]): readonly number[] {
  const costOf = (isBought: boolean): number =>
    bins
      .filter((bin) => bin.isBought === isBought)
      .reduce((sum, bin) => sum + job.stocks[bin.stock]!.cost, 0);
  const left = bins.reduce((sum, bin) => sum + squareOffcuts(job, bin.tree), 0);
  const onBought = bins
    .filter((bin) => bin.isBought)
    .reduce((sum, bin) => sum + contentOfItems(bin.tree), 0);
  return [costOf(true), onBought, costOf(false), -left];
}

function contentOfItems(tree: CutTree): number {
  if (tree.kind === "split") return contentOfItems(tree.near) + contentOfItems(tree.far);
  return tree.kind === "item" ? content(tree.size) : 0;
}

/** Sum of the squared contents of free pieces: one large offcut is worth more than two halves. */
function squareOffcuts(job: CutJob, tree: CutTree): number {
  if (tree.kind === "split") return squareOffcuts(job, tree.near) + squareOffcuts(job, tree.far);
  if (tree.kind === "item") return 0;
  const real = tree.size.map((each) => Math.max(0, each - job.kerf));
  return content(real) ** 2;
}
