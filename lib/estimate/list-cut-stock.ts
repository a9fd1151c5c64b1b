import type { CutPlan } from "../packing/types.ts";
import type { Project, Stock } from "../project/types.ts";
import { countOf } from "./count-of.ts";
import type { Format, Material, Work } from "./types.ts";

/** Slabs, sheets and boards: how many the cut plans use. */
export function listCutStock(work: Work): Material[] {
  const plans = [...work.slabs, ...work.sheets, ...work.boards];
  return plans.flatMap((plan) => {
    const stock = work.project.stock.find((one) => one.id === plan.stock);
    if (stock === undefined || stock.kind === "fabric" || stock.kind === "zip") return [];
    return [lineFor(plan, stock, work)];
  });
}

type CutStock = Exclude<Stock, { kind: "fabric" | "zip" }>;

function lineFor(plan: CutPlan, stock: CutStock, { project, format }: Work): Material {
  const buy = Math.max(0, plan.needed - plan.have);
  return {
    id: `${plan.kind}/${plan.stock}`,
    item: `${stock.label}, ${sizeOf(stock, format)}`,
    quantity: plan.needed,
    perCopy: plan.needed / project.copies,
    unit: "piece",
    unitWord: plan.kind,
    have: plan.have,
    buy,
    basis: basisOf(plan, project, format),
    price: stock.price === null ? null : buy * stock.price,
    group: plan.kind === "slab" ? "foam" : plan.kind,
  };
}

function basisOf(plan: CutPlan, project: Project, format: Format): string {
  const parts = plan.used.reduce((sum, used) => sum + used.places.length, 0);
  const cuts = plan.used.reduce((sum, used) => sum + used.cuts.length, 0);
  const kerf = project.stock.flatMap((one) =>
    one.id === plan.stock && "kerf" in one ? [one.kerf] : [],
  );
  const lost = (kerf[0] ?? 0) > 0 ? `, each ${format.length(kerf[0] ?? 0)} wide for the saw` : "";
  const proof =
    plan.needed === plan.lowerBound
      ? " Fewer cannot do."
      : ` ${capital(countOf(plan.lowerBound, plan.kind))} would hold the parts, if they could be cut from it without waste.`;
  return (
    `${countOf(parts, "part")} cut from ${countOf(plan.needed, plan.kind)} ` +
    `with ${countOf(cuts, "cut")}${lost}.${proof}${leftOver(plan, format)}`
  );
}

/** The largest offcut, which is what is left over that is worth keeping. */
function leftOver({ used }: CutPlan, { sizes }: Format): string {
  const offcuts = used.flatMap((each) => each.offcuts);
  const measure = (size: readonly number[]) => size.reduce((product, side) => product * side, 1);
  const [largest] = offcuts.toSorted((one, other) => measure(other.size) - measure(one.size));
  if (largest === undefined) return "";
  const isOne = largest.size.length === 1;
  return ` Left over: ${countOf(offcuts.length, "offcut")}, the ${isOne ? "longest" : "largest"} ${sizes(largest.size)}.`;
}

function sizeOf(stock: CutStock, { sizes }: Format): string {
  switch (stock.kind) {
    case "slab":
      return sizes(stock.size);
    case "sheet":
      return sizes([...stock.size, stock.thickness]);
    case "board":
      return sizes([...stock.section, stock.length]);
  }
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
