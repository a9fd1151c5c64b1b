import { adhesiveArea } from "./adhesive-area.ts";
import { countOf } from "./count-of.ts";
import { layeredArea } from "./layered-area.ts";
import type { Material, Work } from "./types.ts";

/** Area to coat with foam adhesive. How much that is in cans is for the maker of the can to say. */
export function listGlue(work: Work): Material[] {
  const { project, solids, format } = work;
  return solids.flatMap((solid) => {
    const joined = adhesiveArea(solid.joints);
    const layered = layeredArea(solid, work);
    const perCopy = joined + layered;
    if (perCopy <= 0) return [];
    const quantity = perCopy * project.copies;
    const parts = [
      ...(joined > 0
        ? [`${countOf(solid.joints.length, "joint")} between blocks, ${format.area(joined / 2)}`]
        : []),
      ...(layered > 0 ? [`joints between layers, ${format.area(layered / 2)}`] : []),
    ].join("; ");
    return [
      {
        id: `adhesive/${solid.id}`,
        item: "foam adhesive, area to coat",
        quantity,
        perCopy,
        unit: "mm2",
        unitWord: null,
        have: 0,
        buy: quantity,
        basis:
          `${parts.charAt(0).toUpperCase()}${parts.slice(1)}. Both faces of a joint are coated, so the area counts twice. ` +
          "Divide it by the coverage on the can.",
        price: null,
        group: "other",
      } satisfies Material,
    ];
  });
}
