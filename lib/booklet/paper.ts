import type { Mm } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import { findPaper, usualPaper } from "../units/paper-sizes.ts";

export type PaperName = "a4" | "letter" | "a3" | "tabloid" | "a5" | "half-letter";

export interface Paper {
  readonly name: PaperName;
  /** As a shop says it. */
  readonly label: string;
  readonly width: Mm;
  readonly height: Mm;
}

type Label = "A4" | "Letter" | "A3" | "Tabloid" | "A5" | "Half letter";

const paper = (name: PaperName, label: Label): Paper => {
  const { width, height } = findPaper(label);
  return { name, label, width, height };
};

/** Sheets a home or school printer takes, upright, and the two everyday ones folded once. */
export const papers: Readonly<Record<PaperName, Paper>> = {
  a4: paper("a4", "A4"),
  letter: paper("letter", "Letter"),
  a3: paper("a3", "A3"),
  tabloid: paper("tabloid", "Tabloid"),
  a5: paper("a5", "A5"),
  "half-letter": paper("half-letter", "Half letter"),
};

/** What a sheet of everyday paper is when it is folded once. */
export const foldedPaper = ({ name }: Paper): Paper =>
  name === "letter" ? papers["half-letter"] : papers.a5;

/** The paper of the reader's country; where none is named, Letter goes with inches and A4 with the rest. */
export function choosePaper({ country, units }: Pick<Project, "country" | "units">): Paper {
  if (country === null) return units === "in" ? papers.letter : papers.a4;
  return usualPaper(country.toUpperCase()) === "Letter" ? papers.letter : papers.a4;
}

/** The other of the two everyday papers. */
export const otherPaper = ({ name }: Paper): Paper =>
  name === "letter" ? papers.a4 : papers.letter;
