import type { Mm2, Mm3, Ratio } from "../plane/types.ts";
import type { Unit } from "./types.ts";

/** Kilograms in a pound. @source International yard and pound agreement, 1959: exactly */
export const kilogramsPerPound = 0.45359237;
const mm2PerSquareFoot = 304.8 ** 2;
const mm3PerCubicFoot = 304.8 ** 3;

/** Print an area: square metres, or square feet in an inch project; two figures after the point. */
export function formatArea(area: Mm2, units: Unit): string {
  return units === "in" ? `${fixed(area / mm2PerSquareFoot, 2)} ft²` : `${fixed(area / 1e6, 2)} m²`;
}

/** Print a volume: litres, or cubic feet in an inch project. */
export function formatVolume(volume: Mm3, units: Unit): string {
  return units === "in"
    ? `${fixed(volume / mm3PerCubicFoot, 2)} ft³`
    : `${fixed(volume / 1e6, 1)} l`;
}

/** Print a mass: kilograms, or pounds in an inch project; grams or ounces below one of them. */
export function formatMass(kilograms: number, units: Unit): string {
  if (units === "in") {
    const pounds = kilograms / kilogramsPerPound;
    return pounds < 1 ? `${fixed(pounds * 16, 1)} oz` : `${fixed(pounds, 1)} lb`;
  }
  return kilograms < 1 ? `${fixed(kilograms * 1000, 0)} g` : `${fixed(kilograms, 1)} kg`;
}

/** Print a ratio as a percentage: 0.03 is "3 %". */
export function formatPercent(ratio: Ratio, decimals = 0): string {
  return `${fixed(ratio * 100, decimals)} %`;
}

/** Print money without a currency, always with two decimals: "14.00". */
export function formatPrice(amount: number): string {
  return (Math.round((amount + Number.EPSILON) * 100) / 100).toFixed(2);
}

/** Print a density: kg/m³, or lb/ft³ in an inch project. */
export function formatDensity(kilogramsPerCubicMetre: number, units: Unit): string {
  if (units !== "in") return `${fixed(kilogramsPerCubicMetre, 0)} kg/m³`;
  const perCubicFoot = (kilogramsPerCubicMetre / kilogramsPerPound) * 0.3048 ** 3;
  return `${fixed(perCubicFoot, 1)} lb/ft³`;
}

/** Round with no idle noughts; a half goes up. */
function fixed(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  return String(Math.round((value + Number.EPSILON * Math.abs(value)) * scale) / scale);
}
