import type { Count, Mm } from "../plane/types.ts";
import { type CutItem, type CutJob, content, fitsIn } from "./cut-job.ts";
import { listCuts } from "./list-cuts.ts";
import type { PackedCuts } from "./pack-cuts.ts";
import type { BuyBound, CutPlan, Offcut, Part, Shortfall, UsedStock } from "./types.ts";

/** What plan makers need to know of a kind of stock. */
export interface PlannedStock {
  readonly id: string;
  readonly kind: CutPlan["kind"];
  readonly size: readonly Mm[];
  readonly have: Count;
  readonly price?: number | null;
  readonly isSold?: boolean;
}

/** How pieces of one size are come by; sold, and no sooner used than others, where absent. */
export interface SizeRules {
  readonly isSold?: boolean;
  readonly isFirst?: boolean;
}

export interface CutOptions {
  /** Offcuts smaller than this in any size are waste and are not listed. */
  readonly leastOffcut?: Mm;
  /** Things that would be welcome from offcuts, best first, such as a loose pad. */
  readonly wishes?: readonly Part[];
  /** Fills tried where the search is not exact. */
  readonly tries?: Count;
  /** Says a length in words. */
  readonly say?: (length: Mm) => string;
  /** The smallest length that is printed: remedies ask for whole steps. */
  readonly step?: Mm;
}

/** How remedies write lengths. */
export type CutWords = Required<Pick<CutOptions, "say" | "step">>;

/** A length in millimetres, for remedies where nothing better is given. */
const sayMillimetres = (length: Mm): string => `${Math.round(length * 10) / 10} mm`;

/** The words asked for, or millimetres to a tenth. */
export const cutWords = ({ say = sayMillimetres, step = 0.1 }: CutOptions): CutWords => ({
  say,
  step,
});

/** One plan for each kind of stock, with the pieces on hand first. */
export function makePlans(
  job: CutJob,
  stocks: readonly PlannedStock[],
  packed: PackedCuts,
  short: readonly Shortfall[],
  parts: readonly Part[],
  { leastOffcut = 20, wishes = [] }: CutOptions,
): readonly CutPlan[] {
  return stocks.map((stock, index): CutPlan => {
    const bins = packed.bins.filter((bin) => bin.stock === index);
    const used = bins.map(({ tree }, stockIndex): UsedStock => {
      const { places, cuts, offcuts } = listCuts(tree, job.items, job.kerf);
      const kept = offcuts.filter(({ size }) => size.every((each) => each >= leastOffcut));
      return {
        stockIndex,
        size: stock.size,
        places,
        cuts,
        offcuts: kept.map((offcut) => nameUse(offcut, wishes, parts, job.items)),
      };
    });
    const isOnly = stocks.length === 1;
    return {
      stock: stock.id,
      kind: stock.kind,
      used,
      needed: used.length,
      have: stock.have,
      lowerBound: isOnly ? packed.lowerBound : 0,
      short: isOnly || bins.some((bin) => bin.isBought) || index === 0 ? short : [],
      ...(isOnly ? {} : { buys: buysOf(packed, stocks) }),
    };
  });
}

function buysOf(packed: PackedCuts, stocks: readonly PlannedStock[]): BuyBound {
  const isPriced = stocks.every(({ price = null, isSold = true }) => !isSold || price !== null);
  return {
    unit: isPriced ? "price" : "content",
    cost: packed.cost,
    bound: packed.costBound,
    pieces: Math.min(packed.lowerBound, packed.bins.length),
  };
}

/** What an offcut could still become: the first wish that fits, else one more of the largest part. */
function nameUse(
  offcut: Offcut,
  wishes: readonly Part[],
  parts: readonly Part[],
  items: readonly CutItem[],
): Offcut {
  const wish = wishes.find((each) => fitsTurned(each.size, offcut.size));
  if (wish) return { ...offcut, use: wish.label };
  const again = parts
    .filter((part) =>
      items.some(
        ({ part: id, layer, ways }) =>
          id === part.id && layer[1] === 1 && ways.some(() => fitsTurned(part.size, offcut.size)),
      ),
    )
    .sort((a, b) => content(b.size) - content(a.size))[0];
  return again ? { ...offcut, use: `one more ${again.label}` } : offcut;
}

/** Sizes matched largest to largest: fits at some turn, since every turn of a box is allowed. */
function fitsTurned(size: readonly Mm[], room: readonly Mm[]): boolean {
  const sorted = (sizes: readonly Mm[]): readonly Mm[] => [...sizes].sort((a, b) => b - a);
  return fitsIn(sorted(size), sorted(room));
}
