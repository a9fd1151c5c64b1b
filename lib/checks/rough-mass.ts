import type { Work } from "../estimate/types.ts";
import { kilogramsPerPound } from "../units/format-amounts.ts";

/** A mass that is only known roughly, to a whole kilogram or pound. */
export function roughMass(
  kilograms: number,
  { project, format }: Pick<Work, "project" | "format">,
): string {
  const step = project.units === "in" ? kilogramsPerPound : 1;
  return format.mass(Math.max(1, Math.round(kilograms / step)) * step);
}
