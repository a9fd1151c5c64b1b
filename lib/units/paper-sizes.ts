import type { Mm } from "../plane/types.ts";

export interface PaperSize {
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
  readonly source: string;
}

const iso = "ISO 216:2007, main series A";
const ansi = "ANSI/ASME Y14.1, decimal inch sizes";
const legal = "common practice, no source: US legal paper, 8 1/2 × 14 in";

/** Sheets as they come out of a printer, upright, one row each. */
export const paperSizes = [
  { name: "A0", width: 841, height: 1189, source: iso },
  { name: "A1", width: 594, height: 841, source: iso },
  { name: "A2", width: 420, height: 594, source: iso },
  { name: "A3", width: 297, height: 420, source: iso },
  { name: "A4", width: 210, height: 297, source: iso },
  { name: "A5", width: 148, height: 210, source: iso },
  { name: "A6", width: 105, height: 148, source: iso },
  { name: "Letter", width: 215.9, height: 279.4, source: ansi }, // size A
  { name: "Tabloid", width: 279.4, height: 431.8, source: ansi }, // size B
  { name: "ANSI C", width: 431.8, height: 558.8, source: ansi },
  { name: "ANSI D", width: 558.8, height: 863.6, source: ansi },
  { name: "ANSI E", width: 863.6, height: 1117.6, source: ansi },
  { name: "Legal", width: 215.9, height: 355.6, source: legal },
  { name: "Half letter", width: 139.7, height: 215.9, source: ansi }, // Letter folded once
] as const satisfies readonly PaperSize[];

export type PaperName = (typeof paperSizes)[number]["name"];

/** Look a sheet up by its name. */
export function findPaper(name: PaperName): PaperSize {
  const [first] = paperSizes;
  return paperSizes.find((paper) => paper.name === name) ?? first;
}

/**
 * The sheet that printers of a country hold: Letter in North America and where it is customary
 * elsewhere, A4 in the rest of the world.
 *
 * @source common practice, no source: Unicode CLDR lists these territories for US-Letter (from memory)
 */
export function usualPaper(country: string | null): "A4" | "Letter" {
  return country !== null && letterCountries.has(country) ? "Letter" : "A4";
}

const letterCountries: ReadonlySet<string> = new Set(
  "BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" "),
);
