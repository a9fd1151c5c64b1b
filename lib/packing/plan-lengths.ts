import type { Mm } from "../plane/types.ts";
import { joinSizes, yieldOf } from "./join-sizes.ts";
import { type LengthStock, planBoards } from "./plan-boards.ts";
import type { CutOptions } from "./make-plans.ts";
import type { CutPlan, Part, UsedStock } from "./types.ts";

/** What is bought by length: fixed lengths, or any length off the roll where none are listed. */
export interface RollStock {
  readonly id: string;
  readonly label: string;
  /** Lengths sold, ascending; empty for any length off the roll. */
  readonly lengths: readonly Mm[];
  readonly have: readonly Mm[];
  readonly price: number | null;
}

/**
 * Cut webbing, cord or chain to length with scissors, what is on hand first. Off the roll as little
 * is bought as can be, in one length; of lengths sold, those that cost least together.
 */
export function planLengths(
  parts: readonly Part[],
  stock: RollStock,
  options: CutOptions = {},
): CutPlan | null {
  const isRoll = stock.lengths.length === 0;
  const whole = [...new Set(parts.map(({ size }) => size[0]!))].sort((a, b) => a - b);
  const sold = (isRoll ? whole : stock.lengths).map((length) => sizeOf(stock, length, isRoll));
  const sizes = [...countAlike(stock.have).map((each) => onHand(stock, each)), ...sold];
  const plans = planBoards(parts, sizes, { leastOffcut: 50, ...options });
  const named = sizes.map(({ length, have, price }) => {
    return { label: null, size: [length], have, price };
  });
  const joined = joinSizes(plans, named, stock.id);
  if (joined === null) return null;
  const plan: CutPlan = { ...joined, kind: "length" };
  return isRoll ? rollUp(plan, stock.have.length) : plan;
}

/** Lengths not all of one price are sold by measure: twice the length costs twice as much. */
function sizeOf(stock: RollStock, length: Mm, isRoll: boolean): LengthStock {
  const [shortest = length] = stock.lengths;
  const price = stock.price === null ? null : stock.price * (length / (isRoll ? 1000 : shortest));
  return { id: stock.id, label: stock.label, length, kerf: 0, have: 0, price };
}

const onHand = (
  { id, label }: RollStock,
  { length, count }: { readonly length: Mm; readonly count: number },
): LengthStock => ({
  id,
  label,
  length,
  kerf: 0,
  have: count,
  price: null,
  isSold: false,
  isFirst: true,
});

const countAlike = (lengths: readonly Mm[]) =>
  [...new Set(lengths)].map((length) => ({
    length,
    count: lengths.filter((each) => each === length).length,
  }));

/** Everything that comes off the roll as one length, cut one after another. */
function rollUp(plan: CutPlan, have: number): CutPlan {
  const isNew = ({ stockIndex }: UsedStock): boolean => stockIndex >= firstNew;
  const firstNew = plan.sizes?.reduce((sum, { used, buy }) => sum + used - buy, 0) ?? 0;
  const fresh = plan.used.filter(isNew);
  const old = plan.used.filter((each) => !isNew(each));
  const { sizes, ...rest } = plan;
  if (fresh.length === 0) return { ...plan, have };
  let from: Mm = 0;
  const places = fresh.flatMap((each) =>
    each.places.map((place) => {
      const moved = { ...place, at: [from] };
      from += place.size[0]!;
      return moved;
    }),
  );
  const length = from;
  const cuts = places.slice(0, -1).map((place, i) => ({
    order: i + 1,
    kind: "cross" as const,
    axis: 0,
    at: place.at[0]! + place.size[0]!,
    of: { at: place.at, size: [length - place.at[0]!] },
  }));
  const roll: UsedStock = { stockIndex: old.length, size: [length], places, cuts, offcuts: [] };
  return {
    ...rest,
    used: [...old, roll],
    needed: old.length + 1,
    have,
    lowerBound: 1,
    yield: yieldOf([...old, roll]),
    sizes: [
      ...(sizes ?? []).filter(({ have: count }) => count > 0),
      { label: null, size: [length], have: 0, used: 1, buy: 1, price: null },
    ],
  };
}
