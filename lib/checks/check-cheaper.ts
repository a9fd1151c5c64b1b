import type { Work } from "../estimate/types.ts";
import { listWords } from "../units/list-words.ts";
import { boardParts, sheetParts, slabParts } from "../packing/list-parts.ts";
import { planBoards } from "../packing/plan-boards.ts";
import { planSheets } from "../packing/plan-sheets.ts";
import { planSlabs } from "../packing/plan-slabs.ts";
import type { CutPlan } from "../packing/types.ts";
import type { BoardStock, SheetStock, SlabStock, Stock } from "../project/types.ts";
import { rules } from "./rules.ts";
import type { Check, Finding } from "./types.ts";

type CutStock = SlabStock | SheetStock | BoardStock;

/**
 * Stocks that differ in size and price only, of which another split would cost less. Those that list
 * their other sizes themselves are planned over all of them already.
 */
export const checkCheaper: Check = (work) => {
  const priced = work.project.stock.filter(
    (stock): stock is CutStock =>
      isCutStock(stock) && stock.price !== null && stock.also === undefined,
  );
  const groups = [...new Set(priced.map(kindOf))].map((kind) =>
    priced.filter((stock) => kindOf(stock) === kind),
  );
  return groups.filter((group) => group.length > 1).flatMap((group) => compare(group, work));
};

/** Less than this is no saving. */
const penny = 0.005;

function compare(group: readonly CutStock[], work: Work): Finding[] {
  const own = [...work.slabs, ...work.sheets, ...work.boards].filter((plan) =>
    group.some(({ id }) => id === plan.stock),
  );
  const [first] = own;
  if (first === undefined || own.some(({ short }) => short.length > 0)) return [];
  const now = costOf(own, group);
  const best = [group, ...group.map((one) => [one])]
    .map((stocks) => planAll(stocks, group, work))
    .filter((plans) =>
      plans.every(({ short, needed, have }) => short.length === 0 || needed > have),
    )
    .filter((plans) => plans.length > 0 && plans.every(({ used }) => used.length > 0))
    .toSorted((one, other) => costOf(one, group) - costOf(other, group))[0];
  if (best === undefined || costOf(best, group) >= now - penny) return [];
  return [
    {
      id: `cheaper-stock/${first.stock}`,
      severity: "note",
      about: `stock/${first.stock}`,
      message: `As the file has it, ${wordsOf(own, group)} come to ${now.toFixed(2)}. The same parts from ${wordsOf(best, group)} come to ${costOf(best, group).toFixed(2)}.`,
      remedy: `Cut them from ${listWords(best.map(({ stock }) => labelOf(stock, group)))} instead: it saves ${(now - costOf(best, group)).toFixed(2)}.`,
      source: rules["cheaper-stock"].source,
    },
  ];
}

/** The parts of a whole group of stocks, planned on some of them. */
function planAll(
  stocks: readonly CutStock[],
  group: readonly CutStock[],
  { project, solids, format }: Work,
): readonly CutPlan[] {
  const say = { say: format.length };
  const only = <K extends CutStock["kind"]>(list: readonly CutStock[], kind: K) =>
    list.filter((stock): stock is Extract<CutStock, { kind: K }> => stock.kind === kind);
  switch (stocks[0]?.kind) {
    case "slab":
      return planSlabs(
        only(group, "slab").flatMap(({ id }) => slabParts(project, solids, id)),
        only(stocks, "slab"),
        say,
      );
    case "sheet":
      return planSheets(
        only(group, "sheet").flatMap((sheet) => sheetParts(project, sheet)),
        only(stocks, "sheet"),
        say,
      );
    case "board":
      return planBoards(
        only(group, "board").flatMap(({ id }) => boardParts(project, id)),
        only(stocks, "board"),
        say,
      );
    case undefined:
      return [];
  }
}

function costOf(plans: readonly CutPlan[], group: readonly CutStock[]): number {
  return plans.reduce((sum, { stock, needed, have }) => {
    const price = group.find(({ id }) => id === stock)?.price ?? 0;
    return sum + Math.max(0, needed - have) * price;
  }, 0);
}

function wordsOf(plans: readonly CutPlan[], group: readonly CutStock[]): string {
  return listWords(
    plans
      .filter(({ needed }) => needed > 0)
      .map(({ stock, needed }) => `${needed} × ${labelOf(stock, group)}`),
  );
}

function labelOf(id: string, group: readonly CutStock[]): string {
  return group.find((stock) => stock.id === id)?.label ?? id;
}

function isCutStock(stock: Stock): stock is CutStock {
  return stock.kind === "slab" || stock.kind === "sheet" || stock.kind === "board";
}

/** What two stocks must have in common to stand in for one another. */
function kindOf(stock: CutStock): string {
  switch (stock.kind) {
    case "slab":
      return `slab ${stock.size[2]} ${stock.density} ${stock.hardness} ${stock.isReclaimed === true}`;
    case "sheet":
      return `sheet ${stock.thickness} ${stock.grain}`;
    case "board":
      return `board ${stock.section.join(" ")}`;
  }
}
