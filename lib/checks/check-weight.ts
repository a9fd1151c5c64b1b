import type { Stock } from "../project/types.ts";
import { rules } from "./rules.ts";
import type { Check, Finding } from "./types.ts";

const [made, stocked] = [rules.heavy, rules["heavy-stock"]];

/** Pieces, and slabs, sheets and boards as bought, that are heavy to lift alone. */
export const checkWeight: Check = (work) => {
  const { solids, project, format } = work;
  const heavy = solids.flatMap((solid): Finding[] => {
    if (solid.mass === null || solid.mass <= made.most) return [];
    return [
      {
        id: `heavy/${solid.id}`,
        severity: "caution",
        about: `solid/${solid.id}`,
        message: `The foam of ${solid.id} weighs ${format.mass(solid.mass)}. Lifting it alone can strain the back.`,
        remedy: `Carry it in pairs, or build it in parts of at most ${format.mass(made.most)} each. Pupils carry less.`,
        source: made.source,
      },
    ];
  });
  const plans = [...work.slabs, ...work.sheets, ...work.boards];
  const stock = plans.flatMap((plan): Finding[] => {
    const own = project.stock.find(({ id }) => id === plan.stock);
    const mass = own === undefined ? null : massOf(own);
    if (own === undefined || mass === null || mass <= stocked.most) return [];
    return [
      {
        id: `heavy-stock/${own.id}`,
        severity: "caution",
        about: `stock/${own.id}`,
        message: `A whole ${own.kind} of ${own.label} weighs about ${format.mass(mass)}, and is awkward to hold.`,
        remedy:
          "Carry it in pairs, on edge, or have it cut in two where you buy it. Lay it on two trestles before you cut.",
        source: stocked.source,
      },
    ];
  });
  return [...heavy, ...stock];
};

/** Kilograms of one piece of stock, null where they cannot be known. */
function massOf(stock: Stock): number | null {
  const cubicMetres = (sizes: readonly number[]) =>
    sizes.reduce((product, size) => product * (size / 1000), 1);
  switch (stock.kind) {
    case "slab":
      return stock.density === null ? null : cubicMetres(stock.size) * stock.density;
    case "sheet":
      return cubicMetres([...stock.size, stock.thickness]) * stocked.wood;
    case "board":
      return cubicMetres([...stock.section, stock.length]) * stocked.wood;
    case "fabric":
    case "zip":
    case "length":
      return null;
  }
}
