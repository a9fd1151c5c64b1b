import type { Work } from "../estimate/types.ts";

/**
 * How far apart an edge is snipped so that it follows a curve, in the author's unit.
 *
 * @source common practice, no source
 */
export const clipSpacing = ({ project, format }: Work): string =>
  format.length(project.units === "in" ? 12.7 : 15);
