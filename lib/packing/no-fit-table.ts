import type { Count } from "../plane/types.ts";
import { type NoFit, findNoFit } from "./no-fit.ts";
import type { StripForm } from "./strip-types.ts";

/** Gives the no-fit region of one form round another, worked out on first use. */
export type NoFitTable = (fixed: Count, moving: Count) => NoFit;

/** A table of no-fit regions for the forms of one job; the two ways round are mirror images. */
export function makeNoFitTable(forms: readonly StripForm[]): NoFitTable {
  const found: (NoFit | undefined)[] = Array.from({ length: forms.length ** 2 });
  return (fixed, moving) => {
    const known = found[fixed * forms.length + moving];
    if (known !== undefined) return known;
    const region = findNoFit(forms[fixed]!, forms[moving]!);
    found[moving * forms.length + fixed] = turnHalf(region);
    found[fixed * forms.length + moving] = region;
    return region;
  };
}

/** The region turned half round the origin: moving and fixed change places. */
function turnHalf(region: NoFit): NoFit {
  const edges = region.edges.map((value) => -value);
  return {
    edges,
    fixed: region.moving,
    moving: region.fixed,
    parts: undefined,
    field: undefined,
    asked: 0,
    minX: -region.maxX,
    minY: -region.maxY,
    maxX: -region.minX,
    maxY: -region.minY,
  };
}
