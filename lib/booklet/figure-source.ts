import type { Figure } from "../drawing/types.ts";

/** Where a booklet gets its drawings: the ids there are, and the drawing of each. */
export interface FigureSource {
  readonly ids: readonly string[];
  readonly draw: (id: string) => Figure;
}

/** The drawing of the first of these ids that there is one of, or null. */
export function firstFigure(figures: FigureSource, ids: readonly string[]): Figure | null {
  const found = ids.find((id) => figures.ids.includes(id));
  return found === undefined ? null : figures.draw(found);
}

/** Every drawing whose id starts so, in the order of the list. */
export const figuresUnder = (figures: FigureSource, start: string): readonly Figure[] =>
  figures.ids.filter((id) => id === start || id.startsWith(`${start}/`)).map(figures.draw);
