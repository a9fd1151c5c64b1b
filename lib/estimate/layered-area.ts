import type { Mm2 } from "../plane/types.ts";
import type { Solid } from "../solids/types.ts";
import { blockSpec, coatedLayers, foamLayers, isCutInLayers } from "./foam-layers.ts";
import type { Work } from "./types.ts";

/** Area to coat between the layers of all blocks of a solid, both faces of each joint. */
export function layeredArea(
  solid: Solid,
  { project, slabs }: Pick<Work, "project" | "slabs">,
): Mm2 {
  return solid.blocks.reduce((sum, block) => {
    const part = `${solid.id}/${block.id}`;
    const layers = foamLayers(part, slabs);
    // Are two copies made of one blank? Then each set glues up half of it.
    const isPair = layers[0]?.twin === part;
    const share = isPair ? Math.ceil(project.copies / 2) / project.copies : 1;
    const isCutFirst = isCutInLayers(blockSpec(solid.id, block.id, project), block, layers);
    return sum + share * coatedLayers(block, layers, { isCutFirst });
  }, 0);
}
