import { countOf } from "../estimate/count-of.ts";
import type { Check } from "./types.ts";

/** Slabs, sheets and boards that do not suffice, and parts that cannot be cut from them at all. */
export const checkCutStock: Check = ({ slabs, sheets, boards, project }) =>
  [...slabs, ...sheets, ...boards].flatMap((plan) => {
    const label = project.stock.find((one) => one.id === plan.stock)?.label ?? plan.stock;
    const about = `stock/${plan.stock}`;
    const source = "computed from the cut plan";
    const impossible = plan.short.map((shortfall) => ({
      id: `part-does-not-fit/${shortfall.part}`,
      severity: "note" as const,
      about,
      message: `${shortfall.part} cannot be cut from ${label}: ${withoutStop(shortfall.reason)}.`,
      remedy: shortfall.remedy,
      source,
    }));
    if (plan.have === 0 || plan.needed <= plan.have) return impossible;
    const missing = plan.needed - plan.have;
    return [
      ...impossible,
      {
        id: `${plan.kind}-short/${plan.stock}`,
        severity: "note" as const,
        about,
        message:
          `The plan uses ${countOf(plan.needed, plan.kind)} of ${label} and ${plan.have} ` +
          `${plan.have === 1 ? "is" : "are"} on hand: ${missing} ${missing === 1 ? "is" : "are"} missing.`,
        remedy:
          plan.lowerBound > plan.have
            ? `Buy ${missing} more. No plan can do with ${plan.have}.`
            : `Buy ${missing} more, or make a part a little smaller: by volume alone ${plan.lowerBound} would do.`,
        source,
      },
    ];
  });

function withoutStop(sentence: string): string {
  return sentence.replace(/\.$/, "");
}
