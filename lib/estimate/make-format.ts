import type { Ratio } from "../plane/types.ts";
import type { Unit } from "../project/types.ts";
import { formatArea, formatMass } from "../units/format-amounts.ts";
import { formatLength, formatSizes } from "../units/format-length.ts";
import type { Format } from "./types.ts";

/** How lengths, areas and masses are printed in a project's own unit. */
export function makeFormat(project: { readonly units: Unit; readonly round: Ratio }): Format {
  return {
    length: (length) => formatLength(length, project),
    sizes: (lengths) => formatSizes(lengths, project),
    area: (area) => formatArea(area, project.units),
    mass: (mass) => formatMass(mass, project.units),
  };
}
