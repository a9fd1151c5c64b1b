import { isMisreading, parseFormula } from "./parse-formula.ts";
import type { Expression } from "./types.ts";

/** Names a formula uses, in order of first use; none when it cannot be read. */
export function namesIn(
  written: string | number,
  known: ReadonlySet<string> = new Set(),
): readonly string[] {
  if (typeof written === "number") return [];
  const expression = parseFormula(written, known);
  return isMisreading(expression) ? [] : [...new Set(collect(expression))];
}

function collect(expression: Expression): readonly string[] {
  switch (expression.kind) {
    case "number":
    case "length":
      return [];
    case "name":
      return [expression.name];
    case "negate":
      return collect(expression.of);
    case "binary":
      return [...collect(expression.left), ...collect(expression.right)];
    case "call":
      return expression.of.flatMap(collect);
  }
}
