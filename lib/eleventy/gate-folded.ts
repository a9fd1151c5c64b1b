import type { Paper } from "../booklet/paper.ts";
import type { Count } from "../plane/types.ts";
import { gateSize } from "./gate-common.ts";
import type { PdfFacts } from "./read-pdf.ts";

/** What is wrong with a booklet imposed to fold: sides of another size, or not two for every four pages. */
export function gateFolded(
  facts: PdfFacts,
  pages: Count,
  { width, height, label }: Paper,
): readonly string[] {
  const sides = Math.ceil(pages / 4) * 2;
  return [
    ...gateSize(facts, { width: height, height: width, label: `${label} on its side` }),
    ...(facts.pages.length === sides
      ? []
      : [`${facts.pages.length} sides for ${pages} pages; ${sides} were expected`]),
  ];
}
