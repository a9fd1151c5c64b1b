import { densityInPoundsPerCubicFoot } from "./pounds-per-cubic-foot.ts";

/** @source NIST SP 811 (2008), appendix B.8 */
const newtonsPerPound = 4.4482216152605;

/**
 * The number American foam goes by: two figures of density in tenths of a pound a cubic foot, two of
 * hardness in pounds. Takes kilograms a cubic metre and newtons.
 *
 * @source Upholstery Resource, foam, http://upholsteryresource.com/node/81: 2535 is 2.5 lb and 35 lb
 */
export function foamGrade(density: number, hardness: number): string {
  const tenths = Math.round(10 * densityInPoundsPerCubicFoot(density));
  const pounds = Math.round(hardness / newtonsPerPound);
  return `${String(tenths).padStart(2, "0")}${String(pounds).padStart(2, "0")}`;
}
