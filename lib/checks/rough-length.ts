import type { Work } from "../estimate/types.ts";
import type { Mm } from "../plane/types.ts";

/** A length that is only known roughly, to half a centimetre or a quarter of an inch. */
export function roughLength(
  length: Mm,
  { project, format }: Pick<Work, "project" | "format">,
): string {
  const step = { mm: 5, cm: 5, in: 6.35 }[project.units];
  return format.length(Math.max(1, Math.round(length / step)) * step);
}
