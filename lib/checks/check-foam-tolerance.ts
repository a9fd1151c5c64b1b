import type { Mm } from "../plane/types.ts";
import { inMillimetres } from "./in-millimetres.ts";
import { partTitle } from "./part-title.ts";
import type { Check } from "./types.ts";

/** Thickness may differ by this either way on slab goods of an inch or more. */
const thicknessTolerance: Mm = 25.4 / 16;
const source =
  "Joint Industry Foam Standards, section 10, http://pfa.org/jifsg/jifsgs10.html: thickness ±1/16 in, rest 24 h";

/** Blocks laminated of several slab thicknesses, whose tolerances add up. */
export const checkFoamTolerance: Check = ({ slabs, project }) =>
  slabs.flatMap((plan) => {
    const places = plan.used.flatMap((used) => used.places);
    const parts = [...new Set(places.map(({ part }) => part))];
    return parts.flatMap((part) => {
      const layers = Math.max(
        ...places.filter((one) => one.part === part).map((one) => one.layer[1]),
      );
      if (layers < 2) return [];
      return [
        {
          id: `foam-tolerance/${part}`,
          severity: "note" as const,
          about: `stock/${plan.stock}`,
          message:
            `${partTitle(part, project)} is made of ${layers} pieces of foam. A slab may be ${inMillimetres(thicknessTolerance)} (1/16 in) thicker or thinner ` +
            `than its name, so the block may be out by ${inMillimetres(layers * thicknessTolerance)}.`,
          remedy:
            "Let the foam lie unpacked for 24 hours, measure the layers together, and trim before you glue.",
          source,
        },
      ];
    });
  });
