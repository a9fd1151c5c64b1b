import { yieldOf } from "../packing/join-sizes.ts";
import type { CutPlan } from "../packing/types.ts";
import type { Solid } from "../solids/types.ts";
import type { PlanJson } from "./plan-schema.ts";

/**
 * A cut plan for slabs, sheets or boards as plan.json holds it. A block is named as under its solid;
 * the solid's own name comes first only where there are several solids.
 */
export const jsonCuts = (
  plan: CutPlan,
  solids: readonly Pick<Solid, "id">[],
): PlanJson["slabs"][string] => ({
  used: plan.used.map(({ stockIndex, size, places, cuts, offcuts }) => ({
    stockIndex,
    size,
    places: places.map(({ part, copy, at, size: lies, layer, outline, holes, twin }) => {
      const shared = twin === undefined ? {} : { twin: nameOf(twin, solids) };
      return {
        piece: nameOf(part, solids),
        copy,
        at,
        size: lies,
        layer,
        outline,
        holes: holes ?? [],
        ...shared,
      };
    }),
    cuts: cuts.map(({ order, kind, axis, at, of }) => ({ order, kind, axis, at, of })),
    offcuts: offcuts.map(({ at, size: left, use }) => ({ at, size: left, use })),
  })),
  needed: plan.needed,
  have: plan.have,
  short: plan.short.map(({ part, reason, remedy }) => ({
    piece: nameOf(part, solids),
    reason,
    remedy,
  })),
  lowerBound: plan.lowerBound,
  yield: plan.yield ?? yieldOf(plan.used),
  separately: plan.separately ?? plan.needed,
  sizes: (plan.sizes ?? []).map(({ label, size, have, used, buy, price }) => {
    return { label, size, have, used, buy, price };
  }),
  buys:
    plan.buys === undefined
      ? null
      : { unit: plan.buys.unit, cost: plan.buys.cost, bound: plan.buys.bound },
});

const nameOf = (part: string, solids: readonly Pick<Solid, "id">[]): string =>
  solids.length === 1 && part.startsWith(`${solids[0]!.id}/`)
    ? part.slice(solids[0]!.id.length + 1)
    : part;
