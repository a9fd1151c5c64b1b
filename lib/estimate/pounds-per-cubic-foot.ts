/** One pound a cubic foot in kg per cubic metre: 0.45359237 kg ÷ (0.3048 m)³. */
const kilogramsPerCubicMetre = 0.45359237 / 0.3048 ** 3;

/**
 * Foam density from pounds a cubic foot to kg per cubic metre.
 *
 * @source Worldwide Foam, "Density cross reference",
 * http://worldwidefoam.com/worldwide-foam/news/density-cross-reference (1 lb/ft³ = 16.02 kg/m³)
 */
export function densityFromPoundsPerCubicFoot(pounds: number): number {
  return pounds * kilogramsPerCubicMetre;
}

/** Foam density from kg per cubic metre to pounds a cubic foot. */
export function densityInPoundsPerCubicFoot(kilograms: number): number {
  return kilograms / kilogramsPerCubicMetre;
}
