import { rules } from "./rules.ts";

/** Newtons in a pound of force. @source NIST SP 811 (2008), appendix B.8 */
const newtonsPerPound = 4.4482216;

/**
 * How far foam may be off the hardness it is sold by, either way, in newtons: 3 lb, and a tenth of
 * what is harder than 30 lb.
 *
 * @source Joint Industry Foam Standards (PFA, AFMA) 7/94, http://pfa.org/jifsg/jifsga1.html
 */
export function hardnessTolerance(hardness: number): number {
  const { tolerance, harderShare } = rules["foam-soft"];
  return Math.max(tolerance * newtonsPerPound, harderShare * hardness);
}
