import type { Figure } from "../drawing/types.ts";
import type { Mm } from "../plane/types.ts";

/** Room there is for a figure. */
export interface FigureRoom {
  readonly width: Mm;
  readonly height: Mm;
}

/**
 * Room on a page of the booklet, on A4 and Letter alike.
 * @source our choice: the narrower paper less its margins of 25 and 20 mm; a little over a third of the height for words
 */
export const pageRoom: FigureRoom = { width: 165, height: 150 };

/** Where a booklet gets its drawings: the ids there are, and the drawing of each. */
export interface FigureSource {
  readonly ids: readonly string[];
  readonly draw: (id: string, room?: FigureRoom) => Figure;
}

/** The drawing of the first of these ids that there is one of, or null. */
export function firstFigure(
  figures: FigureSource,
  ids: readonly string[],
  room: FigureRoom = pageRoom,
): Figure | null {
  const found = ids.find((id) => figures.ids.includes(id));
  return found === undefined ? null : figures.draw(found, room);
}

/** A drawing in the first of these rooms in which no label meets another and nothing sticks out, or null. */
export function drawClear(
  figures: FigureSource,
  id: string,
  rooms: readonly FigureRoom[],
): Figure | null {
  for (const room of rooms) {
    const figure = figures.draw(id, room);
    const fits = figure.width <= room.width + 0.5 && figure.height <= room.height + 0.5;
    if (fits && figure.collisions.length === 0) return figure;
  }
  return null;
}

/** Every drawing whose id starts so, in the order of the list. */
export const figuresUnder = (figures: FigureSource, start: string): readonly Figure[] =>
  figures.ids
    .filter((id) => id === start || id.startsWith(`${start}/`))
    .map((id) => figures.draw(id, pageRoom));
