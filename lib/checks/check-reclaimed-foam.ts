import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** Words that say a slab has been in use before. */
const worn = /\b(reclaimed|salvaged|second-?hand|used|old|recycled|re-?used)\b/i;

/** Old foam: it may crumble, and nobody knows its fire rating. */
export const checkReclaimedFoam: Check = ({ slabs, project }) =>
  slabs.flatMap((plan) => {
    const stock = project.stock.find(({ id }) => id === plan.stock);
    if (stock?.kind !== "slab") return [];
    const name = `${stock.id.replaceAll("-", " ")} ${stock.label}`;
    if (stock.isReclaimed !== true && !worn.test(name)) return [];
    return [
      {
        id: `reclaimed-foam/${stock.id}`,
        severity: "warning",
        about: `stock/${stock.id}`,
        message: `${stock.label} has been in use before. Old foam crumbles to dust, is softer than its figures, and its fire rating is unknown.`,
        remedy:
          "Rub it hard: what crumbles, smells or stays dented is waste. Use it in your own home only, under a new cover, and never for a school or for sale.",
        source: rules["reclaimed-foam"].source,
      },
    ];
  });
