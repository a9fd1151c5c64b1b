import { explainIssues } from "./explain-issues.ts";
import type { Ledger } from "./ledger.ts";
import { lineOf } from "./place-fault.ts";
import { ProjectError } from "./project-error.ts";
import { readTree } from "./read-tree.ts";
import { resolveStock } from "./resolve-stock.ts";
import { stockFileSchema } from "./schema.ts";
import type { Fault, SourceFile, Stock } from "./types.ts";

export interface ReadStockFile {
  /** Null when there is any fault. */
  readonly stock: readonly Stock[] | null;
  readonly faults: readonly ProjectError[];
}

/**
 * Read a stock file: plain data, checked by the rules of a project's own stock. Bare numbers are in
 * the unit of the file. There are no dimensions, so lengths are plain lengths.
 */
export function readStockFile({ file, text }: SourceFile): ReadStockFile {
  const tree = readTree(text, 1);
  const told = (found: Fault): ProjectError =>
    new ProjectError(
      { file, line: lineOf(tree.lines, found.field), field: found.field },
      found.fault,
      found.fix,
    );
  const broken = tree.faults.map(
    ({ line, field, fault, fix }) => new ProjectError({ file, line, field }, fault, fix),
  );
  if (broken.length > 0) return { stock: null, faults: broken };
  const result = stockFileSchema.safeParse(tree.value);
  if (!result.success) {
    return { stock: null, faults: explainIssues(result.error.issues, tree.value).map(told) };
  }
  const faults: Fault[] = [];
  const { units } = result.data;
  const ledger: Ledger = { units, names: new Map(), faults, dropped: new Set() };
  const stock = Object.entries(result.data.stock).map(([id, raw]) => resolveStock(ledger, id, raw));
  return faults.length > 0 ? { stock: null, faults: faults.map(told) } : { stock, faults: [] };
}
