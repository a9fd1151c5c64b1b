import type { Count } from "../plane/types.ts";
import type { StripForm, StripItem, StripJob } from "./strip-types.ts";

/**
 * Orders worth trying for a bottom-left lay, each once: largest, tallest, widest, longest, roundest
 * first.
 */
export function layOrders(job: StripJob): readonly (readonly Count[])[] {
  const first = (item: StripItem): StripForm => job.forms[item.forms[0]!]!;
  const ranks: readonly ((item: StripItem) => number)[] = [
    (item) => item.area,
    (item) => first(item).height,
    (item) => first(item).width,
    (item) => Math.max(first(item).width, first(item).height),
    (item) => first(item).width + first(item).height,
    (item) => first(item).width * first(item).height,
  ];
  const orders = ranks.map((rank) =>
    job.items
      .map((item, index) => ({ index, rank: rank(item), area: item.area }))
      .sort((a, b) => b.rank - a.rank || b.area - a.area || a.index - b.index)
      .map(({ index }) => index),
  );
  return orders.filter((one, i) => !orders.slice(0, i).some((two) => looksAlike(job, one, two)));
}

/** Whether two orders lay the same kinds of items one after another. */
const looksAlike = (job: StripJob, one: readonly Count[], two: readonly Count[]): boolean =>
  one.every((item, i) => job.items[item] === job.items[two[i]!]);
