import type { Mm } from "../plane/types.ts";
import type { Unit } from "../project/types.ts";

/**
 * The step cloth and chain are sold in: an eighth of a yard where the project counts in inches,
 * otherwise a tenth of a metre.
 *
 * @source common practice, no source
 */
export const shopStep = (unit: Unit): Mm => (unit === "in" ? 914.4 / 8 : 100);

/** A length rounded up to what a shop sells. 0 stays 0; a hair over a step is not a step more. */
export const shopLength = (length: Mm, unit: Unit): Mm =>
  length <= 0 ? 0 : Math.ceil(length / shopStep(unit) - 1e-6) * shopStep(unit);
