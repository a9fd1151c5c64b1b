import { fibreCare } from "../estimate/fibre-care.ts";
import type { FabricStock } from "../project/types.ts";
import { titleOf } from "./open-hyphens.ts";
import type { Plan } from "./types.ts";

/** How to keep cloth, foam and wood, in words: by fibre where it is known, or else by the label. */
export function careLines({ project, solids }: Plan): readonly string[] {
  const cloth = project.stock.flatMap((stock) =>
    stock.kind === "fabric" ? [clothLine(stock)] : [],
  );
  const hasFoam = solids.some(({ blocks }) => blocks.some(({ foam }) => foam !== null));
  return hasFoam ? [...cloth, wetFoam] : cloth;
}

/** @source common practice, no source */
const wetFoam =
  "Wet foam: press the water out with towels, stand the foam on edge in moving air, and put the cover on " +
  "only when it is dry to the middle. That takes days. Foam that smells of mould is waste.";

function clothLine(stock: FabricStock): string {
  const care = fibreCare(stock);
  const shrink =
    stock.shrink > 0
      ? `Cut sizes allow for ${+(stock.shrink * 100).toFixed(1)} % shrinkage in the first wash.`
      : "Cut sizes allow for no shrinkage: wash the cloth before cutting if the cover is to be washed.";
  const words =
    care === null
      ? "Wash it as its label says."
      : `${care.wash} ${care.dry} ${care.iron} The label of the cloth comes first.`;
  return `${titleOf(stock.label)}${care === null ? "" : ` (${care.name})`}: ${words} ${shrink}`;
}
