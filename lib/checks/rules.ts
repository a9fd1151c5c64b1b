import table from "../../shared/tables/checks.json" with { type: "json" };

/**
 * Limits and sources of every finding, by the first word of its id. The same table is printed in
 * `lib/checks/README.md` and on the page of checks, so the three cannot disagree.
 */
export const rules = table.rules;

export type FindingKind = keyof typeof rules;

/** One row of the list of checks, as words. */
export interface RuleRow {
  readonly finding: string;
  readonly check: string;
  readonly asks: string;
  readonly limit: string;
  readonly source: string;
  /** How the figure is known: seen on the page named, memory, computed, common practice, our choice. */
  readonly known: string;
}

/** Every rule in the order of the table, the figures set into its words. */
export function listRules(): RuleRow[] {
  return Object.entries(rules).map(([finding, rule]) => {
    const { check, asks, limit, source, known } = rule;
    const figures: Readonly<Record<string, string | number>> = rule;
    const words = limit.replace(/\{(\w+)\}/g, (_, name: string) => String(figures[name]));
    return { finding, check, asks, limit: words, source, known };
  });
}
