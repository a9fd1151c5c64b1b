import type { Count, Mm } from "../plane/types.ts";
import type { CutJob, CutTree } from "./cut-job.ts";
import { type PackedCuts, packCuts } from "./pack-cuts.ts";
import type { Part, Shortfall } from "./types.ts";

/** The most a size may be trimmed to save stock, as a share of it. */
const mostTrim = 0.15;
/** Trims are found to this share of the most. */
const trimSteps = 32;
/** Fills tried for each trim. */
const trimTries = 24;

/**
 * What the stock on hand does not give, and the nearest change that would: so much more stock, or
 * one size of one part made smaller by the least that saves buying any. Nothing on hand is no
 * shortage but a purchase.
 */
export function nameShortage(
  stocks: readonly { readonly label: string; readonly have: Count }[],
  packed: PackedCuts,
  job: CutJob,
  remake: (parts: readonly Part[]) => CutJob,
  parts: readonly Part[],
  say: (length: Mm) => string,
): readonly Shortfall[] {
  const bought = packed.bins.filter((bin) => bin.isBought);
  if (bought.length === 0 || stocks.every(({ have }) => have === 0)) return [];
  const lacking = [...new Set(bought.flatMap((bin) => itemsIn(bin.tree)))].map(
    (item) => job.items[item]!.part,
  );
  const more = stocks
    .map(({ label }, index) => ({ label, count: bought.filter((b) => b.stock === index).length }))
    .filter(({ count }) => count > 0)
    .map(({ label, count }) => `${count} more ${label}`)
    .join(" and ");
  const trim = job.items.length > 16 ? null : nearestTrim(parts, remake, say);
  const remedy = trim === null ? `Get ${more}` : `Get ${more}, or ${trim}`;
  return [...new Set(lacking)].map((part) => ({
    part,
    reason: "does not fit on what is on hand beside the other parts",
    remedy,
  }));
}

const itemsIn = (tree: CutTree): readonly Count[] => {
  if (tree.kind === "split") return [...itemsIn(tree.near), ...itemsIn(tree.far)];
  return tree.kind === "item" ? [tree.item] : [];
};

/** The smallest trim of one size of one part that saves buying, in words; null when none does. */
function nearestTrim(
  parts: readonly Part[],
  remake: (parts: readonly Part[]) => CutJob,
  say: (length: Mm) => string,
): string | null {
  let best: { readonly trim: Mm; readonly words: string } | null = null;
  parts.forEach((part, index) => {
    part.size.forEach((size, axis) => {
      const trimmed = (trim: Mm): readonly Part[] =>
        parts.map((each, i) =>
          i === index ? { ...each, size: lessAt(size, axis, trim, each) } : each,
        );
      const unit = (size * mostTrim) / trimSteps;
      const suffices = (steps: number): boolean =>
        packCuts(remake(trimmed(steps * unit)), trimTries).bins.every((bin) => !bin.isBought);
      if (best !== null && unit > best.trim) return;
      if (!suffices(trimSteps)) return;
      let [low, high] = [0, trimSteps];
      while (high - low > 1) {
        const middle = Math.floor((low + high) / 2);
        if (suffices(middle)) high = middle;
        else low = middle;
      }
      const trim = high * unit;
      if (best !== null && best.trim <= trim) return;
      best = { trim, words: `make the ${say(size)} side of ${part.label} ${say(trim)} shorter` };
    });
  });
  return (best as { readonly words: string } | null)?.words ?? null;
}

const lessAt = (size: Mm, axis: Count, trim: Mm, part: Part): readonly Mm[] =>
  part.size.map((each, i) => (i === axis ? size - trim : each));
