import { countOf } from "../estimate/count-of.ts";
import type { CutPlan } from "../packing/types.ts";
import { partTitle } from "./part-title.ts";
import type { Check, Finding } from "./types.ts";

const source = "computed from the cut plan";

/** Slabs, sheets and boards that do not suffice, and parts that cannot be cut from them at all. */
export const checkCutStock: Check = ({ slabs, sheets, boards, project }) =>
  [...slabs, ...sheets, ...boards].flatMap((plan) => {
    const label = project.stock.find((one) => one.id === plan.stock)?.label ?? plan.stock;
    const placed = new Set(
      plan.used.flatMap((used) =>
        used.places.flatMap(({ part, twin }) => (twin === undefined ? [part] : [part, twin])),
      ),
    );
    const about = `stock/${plan.stock}`;
    return [
      ...plan.short
        .filter(({ part }) => !placed.has(part))
        .map(({ part, reason, remedy }) => ({
          id: `part-does-not-fit/${part}`,
          severity: "note" as const,
          about,
          message: `${partTitle(part, project)} cannot be cut from ${label}: ${sentence(`it ${lower(reason)}`)}`,
          remedy: sentence(remedy),
          source,
        })),
      ...missingStock(plan, label),
    ];
  });

function missingStock(plan: CutPlan, label: string): Finding[] {
  const missing =
    plan.sizes?.reduce((sum, { buy }) => sum + buy, 0) ?? Math.max(0, plan.needed - plan.have);
  if (plan.have === 0 || missing === 0) return [];
  // Of what is sold in several sizes nothing is on hand: it is simply bought.
  if (plan.sizes !== undefined && plan.short.length === 0) return [];
  const onHand = `${plan.have} ${plan.have === 1 ? "is" : "are"} on hand`;
  const nearest = plan.short.map(({ remedy }) => sentence(remedy));
  const most =
    plan.sizes === undefined && plan.lowerBound > plan.have
      ? `Buy ${missing} more: ${plan.have} cannot hold the parts, however they are cut.`
      : `Buy ${missing} more.`;
  return [
    {
      id: `${plan.kind}-short/${plan.stock}`,
      severity: "note",
      about: `stock/${plan.stock}`,
      message: `The plan uses ${countOf(plan.needed, plan.kind)} of ${label} and ${onHand}: ${missing} ${missing === 1 ? "is" : "are"} missing.`,
      remedy: [...new Set(nearest.length > 0 ? nearest : [most])].join(" "),
      source,
    },
  ];
}

function sentence(words: string): string {
  return /[.]$/.test(words) ? words : `${words}.`;
}

function lower(words: string): string {
  return words.replace(/^it /i, "");
}
