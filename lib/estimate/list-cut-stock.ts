import type { CutPlan, SizeUse } from "../packing/types.ts";
import type { Mm } from "../plane/types.ts";
import type { LengthStock, Project, Stock } from "../project/types.ts";
import { countOf } from "./count-of.ts";
import type { Format, Material, Work } from "./types.ts";

/** Slabs, sheets, boards and lengths: what the cut plans use, a line for each size. */
export function listCutStock(work: Work): Material[] {
  const plans = [...work.slabs, ...work.sheets, ...work.boards];
  return plans.flatMap((plan) => {
    const stock = work.project.stock.find((one) => one.id === plan.stock);
    if (stock === undefined || stock.kind === "fabric") return [];
    // Zip chain has its line under closings.
    if (stock.kind === "zip") return [];
    if (stock.kind === "length") return [lengthLine(plan, stock, work)];
    return plan.sizes === undefined
      ? [lineFor(plan, stock, work)]
      : plan.sizes.flatMap((size, i) => sizeLine(plan, { stock, size, number: i + 1 }, work));
  });
}

type CutStock = Extract<Stock, { kind: "slab" | "sheet" | "board" }>;

function lineFor(plan: CutPlan, stock: CutStock, { project, format }: Work): Material {
  const buy = Math.max(0, plan.needed - plan.have);
  return {
    id: `${plan.kind}/${plan.stock}`,
    item: `${stock.label}, ${sizeOf(stock, ownSize(stock), format)}`,
    quantity: plan.needed,
    perCopy: plan.needed / project.copies,
    unit: "piece",
    unitWord: plan.kind,
    have: plan.have,
    buy,
    basis: basisOf(plan, project, format),
    price: stock.price === null ? null : buy * stock.price,
    group: groupOf(plan),
  };
}

const groupOf = ({ kind }: CutPlan): Material["group"] =>
  kind === "slab" ? "foam" : kind === "length" ? "other" : kind;

/** One line for each size that is used, the reason for the whole plan beside the first. */
function sizeLine(
  plan: CutPlan,
  {
    stock,
    size,
    number,
  }: { readonly stock: CutStock; readonly size: SizeUse; readonly number: number },
  { project, format }: Work,
): Material[] {
  if (size.used === 0) return [];
  const isFirst = plan.sizes?.find(({ used }) => used > 0) === size;
  const of = `${countOf(size.used, plan.kind)} of this size in the plan above.`;
  return [
    {
      id: number === 1 ? `${plan.kind}/${plan.stock}` : `${plan.kind}/${plan.stock}/${number}`,
      item: `${size.label ?? stock.label}, ${sizeOf(stock, size.size, format)}`,
      quantity: size.used,
      perCopy: size.used / project.copies,
      unit: "piece",
      unitWord: plan.kind,
      have: size.have,
      buy: size.buy,
      basis: isFirst ? `${basisOf(plan, project, format)} ${buyWords(plan)}`.trim() : of,
      price: size.price === null ? null : size.buy * size.price,
      group: groupOf(plan),
    },
  ];
}

/** How near the least any plan must buy this one comes. */
export function buyWords({ buys }: CutPlan): string {
  if (buys === undefined || buys.cost <= 0) return "";
  if (buys.cost <= buys.bound * (1 + 1e-9)) return "No plan can buy for less.";
  const share = Math.floor((buys.bound / buys.cost) * 100);
  return buys.unit === "price"
    ? `This buys for ${money(buys.cost)}; no plan can buy for less than ${money(buys.bound)}.`
    : `No plan can buy less than ${share} % of this.`;
}

const money = (amount: number): string => amount.toFixed(2);

/** Webbing, cord and tape: lengths of what is sold so, or one length off the roll. */
function lengthLine(plan: CutPlan, stock: LengthStock, { project, format }: Work): Material {
  const total = plan.used.reduce(
    (sum, { places }) => sum + places.reduce((all, { size }) => all + size[0]!, 0),
    0,
  );
  const bought = (plan.sizes ?? []).filter(({ buy }) => buy > 0);
  const buy = bought.reduce((sum, size) => sum + size.buy * size.size[0]!, 0);
  const isRoll = stock.lengths.length === 0;
  const parts = plan.used.reduce((sum, { places }) => sum + places.length, 0);
  const list = bought.map((size) => `${size.buy} × ${format.length(size.size[0]!)}`).join(" and ");
  const ask = bought.length === 0 || isRoll ? "" : ` Ask for ${list}.`;
  const paid = bought.map(({ buy: count, price }) => (price === null ? null : count * price));
  return {
    id: `length/${plan.stock}`,
    item: stock.label,
    quantity: total,
    perCopy: total / project.copies,
    unit: "mm",
    unitWord: null,
    have: stock.have.reduce((sum, each) => sum + each, 0),
    buy,
    basis:
      `${countOf(parts, "piece")} cut to length, what is on hand first.${ask} ${buyWords(plan)}`.trim(),
    price:
      stock.price === null
        ? null
        : isRoll
          ? (buy / 1000) * stock.price
          : paid.reduce<number>((sum, each) => sum + (each ?? 0), 0),
    group: "other",
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
      : plan.sizes !== undefined
        ? ""
        : ` ${capital(countOf(plan.lowerBound, plan.kind))} would hold the parts, if they could be cut from it without waste.`;
  const saved =
    plan.separately !== undefined && plan.separately > plan.needed
      ? ` Cutting ${project.copies} sets together saves ${countOf(plan.separately - plan.needed, plan.kind)}.`
      : "";
  return (
    `${countOf(parts, "part")} cut from ${countOf(plan.needed, plan.kind)} ` +
    `with ${countOf(cuts, "cut")}${lost}.${proof}${saved}${leftOver(plan, format)}`
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

function ownSize(stock: CutStock): readonly Mm[] {
  return stock.kind === "board" ? [stock.length] : stock.size;
}

/** A size of a stock with the sizes that are the same for all of it. */
function sizeOf(stock: CutStock, size: readonly Mm[], { sizes }: Format): string {
  switch (stock.kind) {
    case "slab":
      return sizes(size);
    case "sheet":
      return sizes([...size, stock.thickness]);
    case "board":
      return sizes([...stock.section, ...size]);
  }
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
