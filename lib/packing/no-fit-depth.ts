import type { Mm } from "../plane/types.ts";
import { fieldDepth } from "./depth-field.ts";
import { makeCoarseField, makeFineField } from "./make-depth-field.ts";
import type { NoFit } from "./no-fit.ts";

/** Pieces that overlap by no more than this count as touching: a hundred-thousandth of a millimetre. */
export const touching: Mm = 1e-5;

/** After this many questions a finer field pays; many regions are asked only now and then. */
const oftenAsked = 120;

/**
 * How deep a shift lies inside a no-fit region: the shortest way out, and so the least move that
 * parts the two pieces. 0 outside and on the edge.
 */
export function noFitDepth(region: NoFit, x: Mm, y: Mm): Mm {
  if (x <= region.minX || x >= region.maxX || y <= region.minY || y >= region.maxY) return 0;
  return depthWithin(region, x, y);
}

/** As `noFitDepth`, for a shift known to lie within the bounds of the region. */
export function depthWithin(region: NoFit, x: Mm, y: Mm): Mm {
  const field = (region.field ??= makeCoarseField(region.edges, region));
  region.asked += 1;
  if (region.asked === oftenAsked) region.field = makeFineField(field, region);
  return fieldDepth(region.field, x, y);
}
