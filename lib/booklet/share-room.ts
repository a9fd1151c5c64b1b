import type { Figure } from "../drawing/types.ts";
import type { Mm } from "../plane/types.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";

/** Words that take a height of their page, and the drawing that goes with them. */
export interface Pictureless {
  readonly words: Mm;
  readonly id: string | null;
  /** Whether the drawing has an outline and sizes only, no notches or clips. */
  readonly isPlain: boolean;
}

/** Heights for a figure, least first; the width is that of the narrower paper. */
const heights: readonly Mm[] = [38, 45, 52, 60, 70, 80, 95, 110, 125, 140];
const roomOf = (height: Mm): FigureRoom => ({ width: 165, height });

/** A piece drawn this long shows all its marks, or its outline alone. @source our choice */
const legible: Mm = 60;
const legiblePlain: Mm = 40;
/** Share of the largest drawing below which less room is not worth it. @source our choice */
const worthSaving = 0.65;

/** Two figures for one page, each as large as the other leaves room for; null where no two will do. */
export function shareRoom(
  pair: readonly [Pictureless, Pictureless],
  figures: FigureSource,
  height: Mm,
): readonly [Figure, Figure] | null {
  const room = height - pair[0].words - pair[1].words;
  const [first, second] = pair.map((each) => goodFigures(each, figures, room)) as [
    readonly Figure[],
    readonly Figure[],
  ];
  const both = first.flatMap((a) =>
    second.flatMap((b) => (a.height + b.height <= room ? [[a, b] as const] : [])),
  );
  const fill = ([a, b]: readonly [Figure, Figure]): Mm => a.height + b.height;
  // Is one drawn large while the other is drawn as small as it may be? Even sizes read better.
  const lesser = ([a, b]: readonly [Figure, Figure]): Mm => Math.min(a.height, b.height);
  return both.reduce<readonly [Figure, Figure] | null>(
    (best, each) =>
      best === null || lesser(each) + fill(each) > lesser(best) + fill(best) ? each : best,
    null,
  );
}

/** Drawings of a piece in more and more room, all clear, with all marks to be seen. */
export function goodFigures(
  { id, isPlain }: Pictureless,
  figures: FigureSource,
  room: Mm,
): readonly Figure[] {
  if (id === null) return [];
  const all = figures.draw(id, roomOf(heights.at(-1)!));
  const least = Math.min(isPlain ? legiblePlain : legible, worthSaving * (all.drawn ?? 0));
  return heights
    .filter((height) => height <= room)
    .flatMap((height) => drawClear(figures, id, [roomOf(height)]) ?? [])
    .filter(({ drawn = 0 }) => drawn >= least);
}

/** For a page of its own the largest drawing that fits. */
export function largestFigure({ id }: Pictureless, figures: FigureSource, room: Mm): Figure | null {
  if (id === null) return null;
  const rooms = heights.filter((height, i) => i < 4 || height <= room).map(roomOf);
  return drawClear(figures, id, rooms.toReversed()) ?? figures.draw(id, rooms.at(-1));
}
