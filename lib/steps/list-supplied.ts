import type { Work } from "../estimate/types.ts";
import { blockName, stockName } from "./name-parts.ts";

/** Closings and other small goods, by the names the steps use. */
const goods = ["zip", "hook-and-loop tape", "ties", "piping cord", "batting blank", "foam offcut"];

/** What lies on the table before the first step: stock, bought goods, and foam no slab is named for. */
export function listSupplied(work: Work): string[] {
  const { project, slabs, sheets, boards, solids } = work;
  return [
    ...project.stock.map(({ label }) => label),
    ...[...slabs, ...sheets, ...boards].flatMap((plan) =>
      plan.used.map((used) => stockName(plan, used, project)),
    ),
    ...project.buy.map(({ item }) => item),
    ...goods,
    ...solids.flatMap((solid) =>
      solid.blocks
        .filter(({ foam }) => foam === null)
        .map(({ id }) => blockName(solid.id, id, work)),
    ),
  ];
}
