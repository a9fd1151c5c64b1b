import type { Count, Mm, Mm2 } from "../plane/types.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { content } from "./cut-job.ts";
import type { CutPlace, CutPlan, SizeUse, UsedStock } from "./types.ts";

/** One size of a stock, as plans are made for it. */
export interface JoinedSize {
  readonly label: string | null;
  readonly size: readonly Mm[];
  readonly have: Count;
  readonly price: number | null;
}

/**
 * The plans of all sizes of one stock as one plan: pieces numbered through, what is cut from old
 * pieces first. One size comes back as it is, with its yield.
 */
export function joinSizes(
  plans: readonly CutPlan[],
  sizes: readonly JoinedSize[],
  stock: string,
): CutPlan | null {
  const [first] = plans;
  if (first === undefined) return null;
  const used = plans
    .flatMap((plan) => plan.used)
    .map((each, stockIndex): UsedStock => ({ ...each, stockIndex }));
  const taken = sizes.map((_, i) => plans[i]?.used.length ?? 0);
  const { buys, ...one } = first;
  const joined = { ...one, stock, used, yield: yieldOf(used) };
  if (plans.length === 1) return joined;
  const shown = new Map(plans.flatMap(({ short }) => short).map((each) => [each.part, each]));
  return {
    ...joined,
    needed: used.length,
    have: sizes.reduce((sum, { have }) => sum + have, 0),
    lowerBound: buys?.pieces ?? 0,
    short: [...shown.values()],
    sizes: sizes.map(({ label, size, have, price }, i): SizeUse => {
      const buy = Math.max(0, taken[i]! - have);
      return { label, size, have, used: taken[i]!, buy, price };
    }),
    ...(buys === undefined ? {} : { buys }),
  };
}

/** Content of the parts ÷ content of all stock that is cut; 0 where nothing is. */
export function yieldOf(used: readonly UsedStock[]): number {
  const stock = used.reduce((sum, { size }) => sum + content(size), 0);
  const parts = used.reduce(
    (sum, { places }) => sum + places.reduce((all, place) => all + contentOf(place), 0),
    0,
  );
  return stock === 0 ? 0 : parts / stock;
}

/** Content of a part without its holes. */
function contentOf({ size, outline, holes = [] }: CutPlace): number {
  const whole = outline === null ? content(size) : areaOf(outline);
  return holes.reduce((left, hole) => left - areaOf(hole), whole);
}

const areaOf = (outline: readonly (readonly [Mm, Mm])[]): Mm2 => Math.abs(polygonArea(outline));
