import type { Count } from "../plane/types.ts";
import { type Arrangements, arrangementFor, growTree } from "./arrange-exact.ts";
import { type CutBin, type CutJob, content, isSold } from "./cut-job.ts";

interface Choice {
  readonly cost: number;
  /** The set cut from the stock opened last, and which stock that is. */
  readonly set: Count;
  readonly stock: Count;
  readonly isBought: boolean;
  readonly before: Choice | null;
}

/**
 * The cheapest pieces of stock for all items, exact: first the least cost of bought stock, then the
 * least cut from it, then the least stock on hand opened. Null when some item fits nothing.
 */
export function chooseStock(job: CutJob, all: Arrangements): readonly CutBin[] | null {
  const total = all.fronts.length;
  const digits = splitSets(all.counts, total);
  let best: (Choice | null)[] = Array.from({ length: total }, () => null);
  best[0] = { cost: 0, set: 0, stock: -1, isBought: false, before: null };
  job.stocks.forEach((stock, index) => {
    for (
      let n = 0;
      n <
      Math.min(
        stock.have,
        all.counts.reduce((a, b) => a + b, 0),
      );
      n++
    ) {
      best = openOnce(job, all, digits, best, index);
    }
  });
  buyMore(job, all, digits, best);
  const last = best[total - 1]!;
  return last === null ? null : cutBins(job, all, last);
}

/** Share of its cost that opening stock on hand counts for: a tie-break below all others. */
const onHandShare = 1e-7;
/** What is to be used up first counts for so much less again. */
const firstShare = 1e-2;
/** Share of the cost of bought stock that filling it counts for: stock on hand is filled first. */
const fillShare = 1e-3;

function openOnce(
  job: CutJob,
  all: Arrangements,
  digits: readonly (readonly Count[])[],
  best: readonly (Choice | null)[],
  stock: Count,
): (Choice | null)[] {
  const next = [...best];
  const { size, cost, isFirst } = job.stocks[stock]!;
  const share = isFirst === true ? onHandShare * firstShare : onHandShare;
  forEachFit(all, size, (set) => {
    best.forEach((before, done) => {
      if (before === null || !canAdd(all.counts, digits[done]!, digits[set]!)) return;
      const choice = {
        cost: before.cost + cost * share,
        set,
        stock,
        isBought: false,
        before,
      };
      const known = next[done + set];
      if (known == null || choice.cost < known.cost - 1e-13) next[done + set] = choice;
    });
  });
  return next;
}

function buyMore(
  job: CutJob,
  all: Arrangements,
  digits: readonly (readonly Count[])[],
  best: (Choice | null)[],
): void {
  const fits: { set: Count; stock: Count; cost: number }[] = [];
  job.stocks.forEach((kind, stock) => {
    if (isSold(kind))
      forEachFit(all, kind.size, (set) => fits.push({ set, stock, cost: kind.cost }));
  });
  const contents = digits.map((each) =>
    each.reduce((sum, count, kind) => sum + count * content(all.kinds[kind]!.ways[0]!), 0),
  );
  for (let done = 0; done < best.length; done++) {
    const before = best[done];
    if (before == null) continue;
    for (const { set, stock, cost } of fits) {
      if (!canAdd(all.counts, digits[done]!, digits[set]!)) continue;
      const filled = cost * fillShare * (contents[set]! / contents[best.length - 1]!);
      const choice = { cost: before.cost + cost + filled, set, stock, isBought: true, before };
      const known = best[done + set];
      if (known == null || choice.cost < known.cost - 1e-12) best[done + set] = choice;
    }
  }
}

function forEachFit(all: Arrangements, size: readonly number[], use: (set: Count) => void): void {
  for (let set = 1; set < all.fronts.length; set++) {
    if (arrangementFor(all, set, size) !== null) use(set);
  }
}

function splitSets(counts: readonly Count[], total: Count): readonly (readonly Count[])[] {
  return Array.from({ length: total }, (_, set) => {
    let rest = set;
    return counts.map((count) => {
      const digit = rest % (count + 1);
      rest = Math.floor(rest / (count + 1));
      return digit;
    });
  });
}

const canAdd = (counts: readonly Count[], one: readonly Count[], two: readonly Count[]): boolean =>
  counts.every((count, kind) => one[kind]! + two[kind]! <= count);

function cutBins(job: CutJob, all: Arrangements, last: Choice): readonly CutBin[] {
  const taken = all.kinds.map(() => 0);
  const take = (kind: Count): Count => all.kinds[kind]!.items[taken[kind]!++]!;
  const bins: CutBin[] = [];
  for (let choice: Choice | null = last; choice !== null; choice = choice.before) {
    const { stock, set, isBought } = choice;
    if (set === 0) continue;
    const { size } = job.stocks[stock]!;
    const block = arrangementFor(all, set, size)!;
    bins.push({
      stock,
      isBought,
      tree: growTree(
        block,
        size.map(() => 0),
        size,
        take,
      ),
    });
  }
  return bins.reverse();
}
