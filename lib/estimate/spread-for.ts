import type { Project } from "../project/types.ts";

/** What to do about a spread stuff: nothing where the author listed it with its coverage, or else a sum to make. */
export function spreadFor(
  use: "adhesive" | "finish",
  project: Project,
  container: "can" | "tin",
): string {
  return isListed(use, project)
    ? "What to buy of it stands below."
    : `Divide it by the coverage on the ${container}.`;
}

/** Whether the author listed what to buy for it with its coverage, so that the area itself is not bought. */
export function isListed(use: "adhesive" | "finish", { buy }: Project): boolean {
  return buy.some((line) => line.use === use && (line.covers ?? null) !== null);
}
