import { listWords } from "../units/list-words.ts";
import { inMillimetres } from "./in-millimetres.ts";
import { partTitle } from "./part-title.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

const rule = rules["foam-tolerance"];

/** Blocks laminated of several slab thicknesses, whose tolerances add up: one note for each foam. */
export const checkFoamTolerance: Check = ({ slabs, project, format: { length } }) =>
  slabs.flatMap((plan) => {
    const places = plan.used.flatMap((used) => used.places);
    const layersOf = (part: string) =>
      Math.max(...places.filter((one) => one.part === part).map((one) => one.layer[1]));
    const layered = [...new Set(places.map(({ part }) => part))].filter((one) => layersOf(one) > 1);
    const [first] = layered;
    if (first === undefined) return [];
    const most = Math.max(...layered.map(layersOf));
    const names = layered.map((part, index) => named(partTitle(part, project), index));
    const isOne = layered.length === 1;
    const label = project.stock.find(({ id }) => id === plan.stock)?.label ?? plan.stock;
    return [
      {
        id: `foam-tolerance/${plan.stock}`,
        severity: "note" as const,
        about: `stock/${plan.stock}`,
        message:
          `${listWords(names)} ${isOne ? "is" : "are"} built up of ${isOne ? "" : "up to "}${most} layers of ${label}. ` +
          `A slab may be ${inMillimetres(rule.thickness)} (1/16 in) thicker or thinner than its name, ` +
          `so a block may be out by ${length(most * rule.thickness)}.`,
        remedy:
          "Let the foam lie unpacked for 24 hours, measure the layers together, and trim before you glue.",
        source: rule.source,
      },
    ];
  });

/** Only the first name stands at the head of the sentence. */
function named(title: string, index: number): string {
  return index === 0 ? title : title.charAt(0).toLowerCase() + title.slice(1);
}
