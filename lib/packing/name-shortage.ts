import type { Count, Mm } from "../plane/types.ts";
import type { CutJob, CutTree } from "./cut-job.ts";
import type { CutWords } from "./make-plans.ts";
import { nearestTrim } from "./nearest-trim.ts";
import { type PackedCuts, itemsIn } from "./pack-cuts.ts";
import type { Part, Shortfall } from "./types.ts";

/**
 * What the stock on hand does not give, and the nearest changes that would: so much more stock, an
 * odd piece just large enough, or one size made smaller by the least that saves buying any. Nothing on hand is no
 * shortage but a purchase.
 */
export function nameShortage(
  stocks: readonly {
    readonly label: string;
    readonly have: Count;
    readonly isSold?: boolean;
  }[],
  packed: PackedCuts,
  job: CutJob,
  remake: (parts: readonly Part[]) => CutJob,
  parts: readonly Part[],
  words: CutWords,
): readonly Shortfall[] {
  const left = nameLeftOut(packed, job);
  const bought = packed.bins.filter((bin) => bin.isBought);
  if (bought.length === 0 || isNewPurchase(stocks)) return left;
  const lacking = [...new Set(bought.flatMap((bin) => itemsIn(bin.tree)))].map(
    (item) => job.items[item]!.part,
  );
  const more = stocks
    .map(({ label }, index) => ({ label, count: bought.filter((b) => b.stock === index).length }))
    .filter(({ count }) => count > 0)
    .map(({ label, count }) => `${count} more ${label}`)
    .join(" and ");
  const [only] = bought;
  const least = bought.length === 1 && only !== undefined ? sayPiece(only.tree, job, words) : null;
  const trim = nearestTrim(parts, remake, words);
  const remedy = [`Get ${more}`, least, trim].filter((each) => each !== null).join(", or ");
  const short = [...new Set(lacking)].map((part) => ({
    part,
    reason: "does not fit on what is on hand beside the other parts",
    remedy,
  }));
  return [...left, ...short];
}

/** Nothing of what is sold is on hand: then buying is no shortage, whatever old pieces give. */
const isNewPurchase = (
  stocks: readonly { readonly have: Count; readonly isSold?: boolean }[],
): boolean => stocks.every(({ have, isSold = true }) => have === 0 || !isSold);

/** Parts that only an old piece would hold, when all of those are used up. */
function nameLeftOut({ bins }: PackedCuts, job: CutJob): readonly Shortfall[] {
  const cut = new Set(bins.flatMap(({ tree }) => itemsIn(tree)));
  const left = job.items.filter((_, i) => !cut.has(i)).map(({ part }) => part);
  return [...new Set(left)].map((part) => ({
    part,
    reason: "fits none of the sizes that are sold, and the old pieces are used up",
    remedy: "Make it smaller, glue or join it up of two parts, or add a larger size",
  }));
}

/** The smallest piece of stock that what is missing can be cut from, in words, rounded up. */
function sayPiece(tree: CutTree, job: CutJob, { say, step }: CutWords): string {
  const ends = itemEnds(tree);
  const size = job.stocks[0]!.size.map((_, axis) =>
    Math.max(...ends.map((end) => end[axis]! - job.kerf)),
  );
  return `a piece of ${size.map((each) => say(Math.ceil(each / step - 1e-6) * step)).join(" × ")} or larger`;
}

function itemEnds(tree: CutTree): readonly (readonly Mm[])[] {
  if (tree.kind === "split") return [...itemEnds(tree.near), ...itemEnds(tree.far)];
  return tree.kind === "item" ? [tree.at.map((at, axis) => at + tree.size[axis]!)] : [];
}
