import type { Count } from "../plane/types.ts";
import { coverCost } from "./cover-cost.ts";
import { content } from "./cut-job.ts";
import type { CutOptions } from "./make-plans.ts";
import { nestSheets, nestedArea } from "./nest-sheets.ts";
import type { SheetSize } from "./plan-sheets.ts";
import type { CutPlan, Part, Shortfall, UsedStock } from "./types.ts";

/**
 * The plan by right-across cuts, or that of nested outlines where it buys less or opens less of what
 * is on hand, or takes as much and spares cuts before the outlines, or leaves more whole by filling
 * holes. The bound is the area of the parts: no plan of any kind passes it.
 */
export function chooseNested(
  across: readonly CutPlan[],
  parts: readonly Part[],
  {
    sheets,
    tooLarge,
    options,
  }: {
    readonly sheets: readonly SheetSize[];
    readonly tooLarge: readonly Shortfall[];
    readonly options: CutOptions;
  },
): readonly CutPlan[] {
  const nested = parts.length === 0 ? null : nestSheets(parts, sheets, options);
  const taken = nested?.map((used) => used.length) ?? [];
  const needed = counts(across);
  const isNested =
    nested !== null &&
    (isLess(taken, needed, sheets) ||
      (!isLess(needed, taken, sheets) &&
        (savesCuts(nested, across, parts) || sparesStock(nested.flat(), across))));
  const area = nestedArea(parts);
  const largest = Math.max(...sheets.map(({ size }) => content(size)));
  const pieces = Math.ceil(area / largest - 1e-9);
  const buysOf = boundBuys(sheets, area);
  return across.map((plan, i): CutPlan => {
    const used: readonly UsedStock[] = isNested ? nested[i]! : plan.used;
    const buys = plan.buys && {
      ...plan.buys,
      ...buysOf(isNested ? taken : needed),
      pieces,
    };
    return {
      ...plan,
      used,
      needed: used.length,
      lowerBound: across.length === 1 ? Math.min(pieces, used.length) : plan.lowerBound,
      short: isNested && buysNothing(taken, sheets) ? tooLarge : plan.short,
      ...(buys === undefined ? {} : { buys }),
    };
  });
}

/** Parts with outlines of their own are cut freely anyhow: fewer straight cuts come before that. */
function savesCuts(
  nested: readonly (readonly UsedStock[])[],
  across: readonly CutPlan[],
  parts: readonly Part[],
): boolean {
  const countCuts = (used: readonly UsedStock[]): Count =>
    used.reduce((sum, { cuts }) => sum + cuts.length, 0);
  return (
    parts.some(({ outline }) => outline !== null) &&
    countCuts(nested.flat()) < countCuts(across.flatMap(({ used }) => used))
  );
}

/** Whether parts in holes leave a larger piece whole. */
function sparesStock(nested: readonly UsedStock[], across: readonly CutPlan[]): boolean {
  const largest = (used: readonly UsedStock[]): number =>
    Math.max(0, ...used.flatMap(({ offcuts }) => offcuts.map(({ size }) => content(size))));
  return (
    nested.some(({ places }) => places.some(({ inHoleOf }) => inHoleOf !== undefined)) &&
    largest(nested) > largest(across.flatMap(({ used }) => used)) + 1e-6
  );
}

const counts = (plans: readonly CutPlan[]): readonly Count[] => plans.map(({ needed }) => needed);

const costOf = ({ price, size }: SheetSize, isPriced: boolean): number =>
  (isPriced ? price : null) ?? content(size) / 1e4;

const arePriced = (sheets: readonly SheetSize[]): boolean =>
  sheets.every(({ price, isSold = true }) => !isSold || price !== null);

const boughtFor = (taken: readonly Count[], sheets: readonly SheetSize[]): number =>
  sheets.reduce(
    (sum, sheet, i) => sum + Math.max(0, taken[i]! - sheet.have) * costOf(sheet, arePriced(sheets)),
    0,
  );

const buysNothing = (taken: readonly Count[], sheets: readonly SheetSize[]): boolean =>
  boughtFor(taken, sheets) === 0;

/** Whether one way buys for less; if equal, opens less stock. */
function isLess(
  one: readonly Count[],
  two: readonly Count[],
  sheets: readonly SheetSize[],
): boolean {
  const opened = (taken: readonly Count[]): number =>
    sheets.reduce((sum, { size }, i) => sum + taken[i]! * content(size), 0);
  const [a, b] = [boughtFor(one, sheets), boughtFor(two, sheets)];
  return a < b - 1e-9 || (a <= b + 1e-9 && opened(one) < opened(two) - 1e-6);
}

/** What is bought, and the least that the area of the parts leaves to buy. */
function boundBuys(sheets: readonly SheetSize[], area: number) {
  const isPriced = arePriced(sheets);
  const onHand = sheets.reduce((sum, { size, have }) => sum + content(size) * have, 0);
  const sold = sheets
    .filter(({ isSold = true }) => isSold)
    .map((sheet) => ({ cost: costOf(sheet, isPriced), content: content(sheet.size) }));
  const least = coverCost(sold, Math.max(0, area * (1 - 1e-9) - onHand), 0);
  return (taken: readonly Count[]) => {
    const cost = boughtFor(taken, sheets);
    const bound = Math.min(cost, least);
    return { cost, bound };
  };
}
