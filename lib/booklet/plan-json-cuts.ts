import type { CutPlan } from "../packing/types.ts";
import type { PlanJson } from "./plan-schema.ts";

/** A cut plan for slabs, sheets or boards as plan.json holds it. */
export const jsonCuts = (plan: CutPlan): PlanJson["slabs"][string] => ({
  used: plan.used.map(({ stockIndex, size, places, cuts, offcuts }) => ({
    stockIndex,
    size,
    places: places.map(({ part, copy, at, size: lies, layer, outline }) => {
      return { part, copy, at, size: lies, layer, outline };
    }),
    cuts: cuts.map(({ order, kind, axis, at, of }) => ({ order, kind, axis, at, of })),
    offcuts: offcuts.map(({ at, size: left, use }) => ({ at, size: left, use })),
  })),
  needed: plan.needed,
  have: plan.have,
  short: plan.short.map(({ part, reason, remedy }) => ({ part, reason, remedy })),
  lowerBound: plan.lowerBound,
});
