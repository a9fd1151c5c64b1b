import type { Mm3 } from "../plane/types.ts";

const cubicMillimetresPerCubicMetre = 1e9;

/**
 * Mass of foam in kilograms. `density` is in kg per cubic metre, the mass of a one-metre cube.
 *
 * @source Foam Industries, "How much does my foam part weigh?",
 * https://www.foam-industries.com/news/how-much-does-my-foam-part-weigh
 */
export function foamMass(volume: Mm3, density: number): number {
  return (volume / cubicMillimetresPerCubicMetre) * density;
}
