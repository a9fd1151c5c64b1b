import tools from "../../shared/tables/tools.json" with { type: "json" };
import type { Step } from "./types.ts";

/** The tools to lay ready: everything the steps use that is a tool, in the order of first use. */
export function listTools(steps: readonly Step[]): string[] {
  const isTool = new Set(tools.rows.filter((row) => row.isTool).map(({ name }) => name));
  return [...new Set(steps.flatMap(({ uses }) => uses))].filter((name) => isTool.has(name));
}
