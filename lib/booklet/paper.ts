import type { Mm } from "../plane/types.ts";
import type { Project } from "../project/types.ts";

export type PaperName = "a4" | "letter" | "a3" | "tabloid";

export interface Paper {
  readonly name: PaperName;
  /** As a shop says it. */
  readonly label: string;
  readonly width: Mm;
  readonly height: Mm;
}

/**
 * Sheets a home or school printer takes, upright.
 * @source ISO 216:2007 for A3 and A4; ANSI/ASME Y14.1 sizes A and B for Letter and Tabloid
 */
export const papers: Readonly<Record<PaperName, Paper>> = {
  a4: { name: "a4", label: "A4", width: 210, height: 297 },
  letter: { name: "letter", label: "Letter", width: 215.9, height: 279.4 },
  a3: { name: "a3", label: "A3", width: 297, height: 420 },
  tabloid: { name: "tabloid", label: "Tabloid", width: 279.4, height: 431.8 },
};

const letterCountries: readonly string[] = ["US", "CA"];

/** Letter where the reader's printer holds it: in the United States, Canada, or a project in inches. */
export function choosePaper({ country, units }: Pick<Project, "country" | "units">): Paper {
  if (country === null) return units === "in" ? papers.letter : papers.a4;
  return letterCountries.includes(country.toUpperCase()) ? papers.letter : papers.a4;
}

/** The other of the two everyday papers. */
export const otherPaper = (paper: Paper): Paper =>
  paper.name === "letter" ? papers.a4 : papers.letter;
