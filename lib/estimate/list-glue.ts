import { adhesiveArea } from "./adhesive-area.ts";
import { countOf } from "./count-of.ts";
import type { Material, Work } from "./types.ts";

/** Area to coat with foam adhesive. How much that is in cans is for the maker of the can to say. */
export function listGlue({ project, solids, format }: Work): Material[] {
  return solids.flatMap((solid) => {
    const perCopy = adhesiveArea(solid.joints);
    if (perCopy <= 0) return [];
    const quantity = perCopy * project.copies;
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
          `${countOf(solid.joints.length, "joint")} of the ${solid.id}, ${format.area(perCopy / 2)} in all, ` +
          "coated on both sides. Divide by the coverage on the can.",
        price: null,
        group: "other",
      } satisfies Material,
    ];
  });
}
