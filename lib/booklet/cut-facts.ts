import { yieldOf } from "../packing/join-sizes.ts";
import type { CutPlan } from "../packing/types.ts";
import type { Count } from "../plane/types.ts";
import type { Format } from "../units/make-format.ts";
import type { Fact } from "./pages.ts";

/** What a cut plan uses, how well, how near it comes to the best there can be, and what a set saves. */
export function cutFacts(
  plan: CutPlan,
  { copies, format }: { readonly copies: Count; readonly format: Format },
): readonly Fact[] {
  const { needed, have, lowerBound, used, separately, buys } = plan;
  return [
    { label: "Needed", value: `${needed}` },
    { label: "On hand", value: `${have}` },
    { label: "No plan can use fewer than", value: `${lowerBound}` },
    { label: "Share that becomes parts", value: format.percent(plan.yield ?? yieldOf(used)) },
    ...(buys === undefined || buys.cost <= 0
      ? []
      : [{ label: "No plan can buy for less than", value: boundWords(buys, format) }]),
    ...(copies > 1 && separately !== undefined
      ? [{ label: `${copies} sets cut one by one would take`, value: `${separately}` }]
      : []),
  ];
}

function boundWords({ unit, cost, bound }: NonNullable<CutPlan["buys"]>, format: Format): string {
  if (cost <= bound * (1 + 1e-9)) return unit === "price" ? cost.toFixed(2) : "this";
  return unit === "price"
    ? `${bound.toFixed(2)}, this for ${cost.toFixed(2)}`
    : `${format.percent(bound / cost)} of this`;
}
