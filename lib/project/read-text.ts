import type { Count } from "../plane/types.ts";
import { checkMarkdown } from "./check-markdown.ts";
import type { FormulaSetting } from "./print-formulas.ts";
import { printFormulas } from "./print-formulas.ts";
import type { LinedFault } from "./read-tree.ts";
import { splitText } from "./split-text.ts";
import type { TextPart } from "./types.ts";

export interface ReadText {
  readonly words: readonly TextPart[];
  readonly faults: readonly LinedFault[];
}

/** Read the author's text: cut it up, print its lengths, refuse what could run as code. */
export function readText(body: string, firstLine: Count, setting: FormulaSetting): ReadText {
  const printed = printFormulas(body, firstLine, setting);
  const { parts, faults } = splitText(printed.text, firstLine);
  const markup = parts.flatMap((part) =>
    part.kind === "figure" ? [] : checkMarkdown(part.markdown, part.line),
  );
  return { words: parts, faults: [...printed.faults, ...faults, ...markup] };
}
