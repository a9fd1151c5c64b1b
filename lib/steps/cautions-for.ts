import safety from "../../shared/safety/cautions.json" with { type: "json" };
import tools from "../../shared/tables/tools.json" with { type: "json" };
import type { Finding } from "../checks/types.ts";
import type { Caution } from "./types.ts";

const table: Readonly<Record<string, Omit<Caution, "id" | "severity"> & { severity: string }>> =
  safety.cautions;
const rank = ["danger", "warning", "caution", "note"];

/** The caution that goes with a tool or a material, or null. */
export function cautionOf(name: string): string | null {
  return tools.rows.find((tool) => tool.name === name)?.caution ?? null;
}

/**
 * The cautions a step needs for what it uses and for the processes in it, gravest first. The four
 * parts of each come from one reviewed file.
 *
 * @source `shared/safety/cautions.json`, each with its own source
 */
export function cautionsFor(uses: readonly string[], processes: readonly string[]): Caution[] {
  const ids = [...uses.flatMap((name) => cautionOf(name) ?? []), ...processes];
  return [...new Set(ids)]
    .flatMap((id) => {
      const row = table[id];
      return row === undefined
        ? []
        : [{ id, ...row, severity: row.severity as Finding["severity"] }];
    })
    .toSorted((one, other) => rank.indexOf(one.severity) - rank.indexOf(other.severity));
}
