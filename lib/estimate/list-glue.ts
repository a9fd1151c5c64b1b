import type { Mm2 } from "../plane/types.ts";
import { adhesiveArea } from "./adhesive-area.ts";
import { countOf } from "./count-of.ts";
import { layeredArea } from "./layered-area.ts";
import { isListed, spreadFor } from "./spread-for.ts";
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
        buy: isListed("adhesive", project) ? 0 : quantity,
        basis:
          `${parts.charAt(0).toUpperCase()}${parts.slice(1)}. Both faces of a joint are coated, so the area counts twice. ` +
          spreadFor("adhesive", project, "can"),
        price: null,
        group: "other",
      } satisfies Material,
    ];
  });
}

/** Area to coat in one copy of everything that is glued of foam. */
export function glueArea(work: Work): Mm2 {
  return work.solids.reduce(
    (sum, solid) => sum + adhesiveArea(solid.joints) + layeredArea(solid, work),
    0,
  );
}
