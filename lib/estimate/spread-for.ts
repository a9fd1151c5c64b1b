import type { Project } from "../project/types.ts";

/** What to do about a spread stuff: nothing where the author listed it with its coverage, or else a sum to make. */
export function spreadFor(
  use: "adhesive" | "finish",
  { buy }: Project,
  container: "can" | "tin",
): string {
  return buy.some((line) => line.use === use && (line.covers ?? null) !== null)
    ? "What to buy of it stands below."
    : `Divide it by the coverage on the ${container}.`;
}
