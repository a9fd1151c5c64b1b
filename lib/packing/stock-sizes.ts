import type { Count, Mm } from "../plane/types.ts";
import type { StockSize } from "../project/types.ts";
import type { JoinedSize } from "./join-sizes.ts";
import type { SizeRules } from "./make-plans.ts";

/** One size of a stock with everything a plan needs of it. */
export interface PlannedSize extends JoinedSize, Required<SizeRules> {
  /** What it is called in a remedy: "foam of 120 × 60 × 8 cm". */
  readonly words: string;
}

/** Every size of a stock: what is to be used up first, then the stock's own size, then others. */
export function stockSizes(
  stock: {
    readonly label: string;
    readonly size: readonly Mm[];
    readonly have: Count;
    readonly price: number | null;
    readonly also?: readonly StockSize[];
  },
  say: (size: readonly Mm[]) => string,
): readonly PlannedSize[] {
  const { label, size, have, price, also = [] } = stock;
  const own: PlannedSize = {
    label: null,
    words: also.length === 0 ? label : `${label} of ${say(size)}`,
    size,
    have,
    price,
    isSold: true,
    isFirst: false,
  };
  const others = also.map((each): PlannedSize => ({
    ...each,
    words: `${each.label ?? label} of ${say(each.size)}`,
  }));
  return [
    ...others.filter(({ isFirst }) => isFirst),
    own,
    ...others.filter(({ isFirst }) => !isFirst),
  ];
}
