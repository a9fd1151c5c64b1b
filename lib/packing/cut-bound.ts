import type { Count, Mm } from "../plane/types.ts";
import { coverCost } from "./cover-cost.ts";
import { type CutItem, type CutJob, content, isSold, sameSize } from "./cut-job.ts";

/**
 * The fewest pieces of stock any plan can use: the larger of two bounds. Content: all items melted
 * down. Pairs: items of which no two can lie in the same piece of stock each need their own.
 *
 * @source Martello and Vigo 1998, "Exact solution of the two-dimensional finite bin packing problem"
 */
export function cutBound(job: CutJob): Count {
  const largest = Math.max(...job.stocks.map((stock) => content(stock.size)));
  const whole = job.items.reduce((sum, item) => sum + content(item.ways[0]!), 0);
  return Math.max(Math.ceil(whole / largest - 1e-9), countApart(job));
}

/**
 * The least that any plan must buy for: whole pieces that make up what the stock on hand cannot hold,
 * even melted down, and as many as there must be at all.
 */
export function costToBuy(job: CutJob): number {
  const whole = job.items.reduce((sum, item) => sum + content(item.ways[0]!), 0);
  const onHand = job.stocks.reduce((sum, { size, have }) => sum + content(size) * have, 0);
  const count = job.stocks.reduce((sum, { have }) => sum + have, 0);
  const sold = job.stocks
    .filter(isSold)
    .map(({ size, cost }) => ({ cost, content: content(size) }));
  return coverCost(sold, Math.max(0, whole * (1 - 1e-9) - onHand), cutBound(job) - count);
}

/** Size of a set of items that must all lie apart, found largest first. */
function countApart(job: CutJob): Count {
  const bySize = [...job.items].sort((a, b) => content(b.ways[0]!) - content(a.ways[0]!));
  const apart: CutItem[] = [];
  for (const item of bySize) {
    if (apart.every((other) => mustLieApart(job, item, other))) apart.push(item);
  }
  return apart.length;
}

/** Two blocks in one piece of stock are parted along some axis, so along it both must fit. */
function mustLieApart(job: CutJob, one: CutItem, two: CutItem): boolean {
  return job.stocks.every(({ size }) =>
    size.every((room, axis) => least(one, axis) + least(two, axis) > room + sameSize),
  );
}

const least = (item: CutItem, axis: Count): Mm => Math.min(...item.ways.map((way) => way[axis]!));
