import type { Place } from "../project/types.ts";
import type { Material, Work } from "./types.ts";
import { wrapBlank } from "./wrap-blank.ts";

/** A batting blank for each cover that the author made larger than its foam. */
export function listBatting({ project, solids, format }: Work): Material[] {
  return project.solids.flatMap((spec) => {
    const solid = solids.find((one) => one.id === spec.id);
    if (solid === undefined || spec.cover === null || !isLarger(spec.cover.ease)) return [];
    const [width, depth, thickness] = solid.size;
    const blank = wrapBlank({ width, depth, thickness });
    return [
      {
        id: `batting/${spec.id}`,
        item: `batting blank, ${format.sizes(blank)}`,
        quantity: project.copies,
        perCopy: 1,
        unit: "piece",
        unitWord: "blank",
        have: 0,
        buy: project.copies,
        basis:
          `The cover is larger than the foam. The blank goes round the ${format.sizes(solid.size)} foam ` +
          `with ${format.length(50.8)} to trim.`,
        price: null,
        group: "other",
      } satisfies Material,
    ];
  });
}

function isLarger(ease: Place): boolean {
  return ease.every((one) => one >= 0) && ease.some((one) => one > 0);
}
