import type { Mm, Ratio } from "../plane/types.ts";
import type { Unit } from "../project/types.ts";
import type { Format } from "./types.ts";

/** How lengths, areas and masses are printed in a project's own unit. */
export function makeFormat(project: { readonly units: Unit; readonly round: Ratio }): Format {
  const isInch = project.units === "in";
  return {
    length: (length) => formatLength(length, project),
    area: (area) =>
      isInch ? `${decimal(area / 92903.04, 1)} sq ft` : `${decimal(area / 1e6, 2)} m²`,
    mass: (mass) => (isInch ? `${decimal(mass / 0.45359237, 1)} lb` : `${decimal(mass, 1)} kg`),
  };
}

function formatLength(length: Mm, { units, round }: { units: Unit; round: Ratio }): string {
  if (units === "mm") return `${decimal(length, 0)} mm`;
  if (units === "cm") return `${decimal(length / 10, 1)} cm`;
  const parts = Math.round(1 / round);
  const steps = Math.round((length / 25.4) * parts);
  const whole = Math.floor(steps / parts);
  const rest = steps - whole * parts;
  if (rest === 0) return `${whole} in`;
  const shared = divisor(rest, parts);
  const fraction = `${rest / shared}/${parts / shared}`;
  return whole === 0 ? `${fraction} in` : `${whole} ${fraction} in`;
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

function decimal(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}
