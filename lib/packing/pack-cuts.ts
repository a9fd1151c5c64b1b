import type { Count } from "../plane/types.ts";
import { type ArrangeLimits, arrangeExact } from "./arrange-exact.ts";
import { chooseStock } from "./choose-stock.ts";
import { costToBuy, cutBound } from "./cut-bound.ts";
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
  /** What all bought stock costs, and the least any plan could buy for, in the unit of the job's costs. */
  readonly cost: number;
  readonly costBound: number;
}

/**
 * Limits of the exact search: all arrangements of few items, those of many only where many are alike,
 * and longer where a proof is wanted, for blocks with much waste are then left out.
 *
 * @source our choice: about a second on one core
 */
const fewItems: Count = 12;
const fewLimits: ArrangeLimits = { budget: 3_000_000, mostSets: 5000 };
const manyLimits: ArrangeLimits = { budget: 2_000_000, mostSets: 700 };
const proofLimits: ArrangeLimits = { budget: 12_000_000, mostSets: 5000 };
const trimLimits: ArrangeLimits = { budget: 150_000, mostSets: 300 };

const rules: readonly FitRule[] = ["tightest", "smallest", "fullest-side"];

/**
 * Cut all items of a job from as little bought stock as can be, then from as little stock on hand,
 * leaving large offcuts. Every item must fit some stock. Small jobs are exact and say so.
 */
export function packCuts(job: CutJob, tries = 300): PackedCuts {
  if (job.items.length === 0) {
    return { bins: [], lowerBound: 0, isProven: true, cost: 0, costBound: 0 };
  }
  const quick = findGreedy(job, tries);
  const exact = findExact(job);
  const best = exact !== null && isCheaper(job, exact, quick) ? exact : quick;
  if (job.stocks.length > 1) return packedKinds(job, best, exact !== null);
  if (exact !== null) return packedOne(job, best, best.length);
  const proof = proveFewest(job, best);
  return packedOne(job, proof.bins, proof.lowerBound);
}

function packedKinds(job: CutJob, bins: readonly CutBin[], isExact: boolean): PackedCuts {
  const cost = boughtCost(job, bins);
  const costBound = isExact ? cost : Math.min(cost, costToBuy(job));
  const isProven = isExact || cost <= costBound;
  return { bins, lowerBound: cutBound(job), isProven, cost, costBound };
}

function packedOne(job: CutJob, bins: readonly CutBin[], lowerBound: Count): PackedCuts {
  const [stock] = job.stocks;
  return {
    bins,
    lowerBound,
    isProven: bins.length === lowerBound,
    cost: boughtCost(job, bins),
    costBound: stock!.cost * Math.max(0, lowerBound - stock!.have),
  };
}

/**
 * One kind of stock: try every count from the bound up. So many pieces leave only so much waste, and
 * no block of such a plan holds more; so the first count that works, or the one at hand, is fewest.
 */
function proveFewest(
  job: CutJob,
  known: readonly CutBin[],
): { readonly bins: readonly CutBin[]; readonly lowerBound: Count } {
  const room = content(job.stocks[0]!.size);
  const bulk = job.items.reduce((sum, item) => sum + content(item.ways[0]!), 0);
  for (let count = cutBound(job); count < known.length; count++) {
    const mostWaste = count * room - bulk;
    const limits = job.items.length <= fewItems ? proofLimits : manyLimits;
    const all = arrangeExact(job, { ...limits, mostWaste });
    if (all === null) return { bins: known, lowerBound: count };
    const bins = chooseStock(job, all);
    if (bins !== null && bins.length <= count) return { bins, lowerBound: count };
  }
  return { bins: known, lowerBound: known.length };
}

/** What all bought stock of a plan costs. */
export const boughtCost = (job: CutJob, bins: readonly CutBin[]): number =>
  bins.reduce((sum, bin) => sum + (bin.isBought ? job.stocks[bin.stock]!.cost : 0), 0);

function findExact(job: CutJob): readonly CutBin[] | null {
  const all = arrangeExact(job, job.items.length <= fewItems ? fewLimits : manyLimits);
  return all === null ? null : chooseStock(job, all);
}

/** Whether a search finds a plan that buys nothing; few items are searched exactly. */
export function needsNoBuying(job: CutJob, tries: Count): boolean {
  if (costToBuy(job) > 1e-9) return false;
  const buysNone = (bins: readonly CutBin[]): boolean => bins.every(({ isBought }) => !isBought);
  if (buysNone(findGreedy(job, tries, true))) return true;
  const onHand = job.stocks.reduce((sum, { size, have }) => sum + content(size) * have, 0);
  const bulk = job.items.reduce((sum, item) => sum + content(item.ways[0]!), 0);
  const all = arrangeExact(job, { ...trimLimits, mostWaste: onHand - bulk });
  const bins = all === null ? null : chooseStock(job, all);
  return bins !== null && buysNone(bins);
}

/** Many fills from orders that are shuffled a little, keeping the best. */
function findGreedy(job: CutJob, tries: Count, stopsWhenEnough = false): readonly CutBin[] {
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
    if (stopsWhenEnough && bins.every(({ isBought }) => !isBought)) break;
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
 * Whether one plan leaves less uncut or buys for less than another; if equal, cuts less from bought
 * stock, opens less of what is on hand, what is not to go first before what is, or leaves larger
 * offcuts.
 */
export function isCheaper(job: CutJob, one: readonly CutBin[], two: readonly CutBin[]): boolean {
  const [a, b] = [scorePlan(job, one), scorePlan(job, two)];
  const decided = a.findIndex((score, i) => Math.abs(score - b[i]!) > 1e-9 * Math.abs(score));
  return decided >= 0 && a[decided]! < b[decided]!;
}

export function scorePlan(job: CutJob, bins: readonly CutBin[]): readonly number[] {
  const costOf = (isCounted: (bin: CutBin) => boolean): number =>
    bins.filter(isCounted).reduce((sum, bin) => sum + job.stocks[bin.stock]!.cost, 0);
  const isOld = (bin: CutBin): boolean => job.stocks[bin.stock]!.isFirst === true;
  const missing = job.items.length - bins.reduce((sum, { tree }) => sum + itemsIn(tree).length, 0);
  const left = bins.reduce((sum, bin) => sum + squareOffcuts(job, bin.tree), 0);
  const onBought = bins
    .filter((bin) => bin.isBought)
    .reduce((sum, bin) => sum + contentOfItems(bin.tree), 0);
  return [
    missing,
    costOf((bin) => bin.isBought),
    onBought,
    costOf((bin) => !bin.isBought && !isOld(bin)),
    costOf((bin) => !bin.isBought && isOld(bin)),
    -left,
  ];
}

/** Items of a cutting tree, nearest first. */
export const itemsIn = (tree: CutTree): readonly Count[] => {
  if (tree.kind === "split") return [...itemsIn(tree.near), ...itemsIn(tree.far)];
  return tree.kind === "item" ? [tree.item] : [];
};

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
