import type { Count } from "../plane/types.ts";
import { formatLength } from "../units/format-length.ts";
import { parseLength } from "../units/parse-length.ts";
import type { LengthStyle, NamedSizes } from "../units/types.ts";
import { shorten } from "./describe.ts";
import type { LinedFault } from "./read-tree.ts";

export interface Printed {
  readonly text: string;
  readonly faults: readonly LinedFault[];
}

/** What formulas in the text may use. Null where the dimensions could not be read at all. */
export type FormulaSetting = LengthStyle & { readonly names: NamedSizes | null };

/**
 * Replace each `{{ formula }}` by its printed length. Lines are kept.
 *
 * Anything else in template brackets is refused, so text can never be run as code.
 */
export function printFormulas(text: string, firstLine: Count, setting: FormulaSetting): Printed {
  const faults: LinedFault[] = [];
  const printed = text.split("\n").map((row, index) => {
    const line = firstLine + index;
    const refuse = (fault: string, fix: string) =>
      void faults.push({ line, field: "text", fault, fix });
    const done = row.replace(/\{\{([^{}]*)\}\}/g, (whole, formula: string) =>
      printOne(whole, formula.trim(), { setting, refuse }),
    );
    const left = /\{\{|\}\}|\{%|%\}|\{#|#\}/.exec(done)?.[0];
    if (left !== undefined) {
      refuse(
        `holds ${left}, which is template code`,
        "Write {{ 2 * depth }} to print a length, or take it out",
      );
    }
    return done;
  });
  return { text: printed.join("\n"), faults };
}

function printOne(
  whole: string,
  formula: string,
  {
    setting,
    refuse,
  }: { readonly setting: FormulaSetting; readonly refuse: (fault: string, fix: string) => void },
): string {
  const { names, units } = setting;
  const stands = "…"; // printed nowhere: a file with faults builds no booklet
  if (names === null) return stands;
  const reading = parseLength(formula, { units, names, allow: "notNegative" });
  if (reading.ok) return formatLength(reading.value, setting);
  if (reading.isFollowOn) return stands;
  refuse(
    `expected a length or a formula in ${shorten(whole)}`,
    `${reading.fix}, because ${reading.fault}`,
  );
  return stands;
}
