import type { Figure } from "../drawing/types.ts";
import type { Mm, Ratio } from "../plane/types.ts";
import { pageRoom } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";

export interface FigureFit {
  /** The room there is in the place of the room the booklet would give. */
  readonly room: (asked: FigureRoom) => FigureRoom;
  readonly magnify: Ratio;
  /** Heights to try, one after the other, before labels are magnified less. */
  readonly taller?: readonly Mm[];
  /** The least that labels may be magnified where they find no clear place in full. */
  readonly least?: Ratio;
}

/** Labels of 11.3 pt are then 12 pt. @source UKAAF clear print: 12 pt at least */
const clearPrint: Ratio = 1.06;

/**
 * The same drawings for other pages: drawn for less room or more, and printed larger or smaller. Where
 * labels magnified in full find no clear place, they are magnified less, down to 12 pt; where even the
 * plain drawing is too wide, it is drawn for the booklet's own room and reduced whole.
 */
export const fitFigures = (
  { ids, draw }: FigureSource,
  { room, magnify, taller = [], least = clearPrint }: FigureFit,
): FigureSource => ({
  ids,
  draw: (id, asked = pageRoom) => {
    const space = room(asked);
    const within = (by: Ratio, { width, height }: FigureRoom = space): Figure =>
      scaleFigure(draw(id, { width: width / by, height: height / by }), by);
    const first = within(magnify);
    if (isClear(first, space)) return first;
    for (const height of taller) {
      const higher = { width: space.width, height };
      const figure = within(magnify, higher);
      if (isClear(figure, higher)) return figure;
    }
    const less = [(magnify + least) / 2, least].filter((by) => by < magnify - 0.02);
    for (const by of less) {
      const figure = within(by);
      if (isClear(figure, space)) return figure;
    }
    const whole = draw(id, asked);
    const by = Math.min(1, space.width / whole.width, space.height / whole.height);
    const isLarge = least > clearPrint;
    return !isLarge && isClear(whole, asked) && by >= leastReduction
      ? scaleFigure(whole, by)
      : first;
  },
});

/** Labels of 11.3 pt are then 8 pt, the least that a copier keeps. @source reprographics practice: 8 pt */
const leastReduction: Ratio = 0.71;

const isClear = ({ collisions, width, height }: Figure, room: FigureRoom): boolean =>
  collisions.length === 0 && width <= room.width + 0.5 && height <= room.height + 0.5;

/** A drawing printed larger or smaller than it was drawn; its scale is said anew. */
export function scaleFigure(figure: Figure, by: Ratio): Figure {
  if (Math.abs(by - 1) < 1e-9) return figure;
  const [width, height] = [figure.width * by, figure.height * by];
  const size = `width="${width.toFixed(2)}mm" height="${height.toFixed(2)}mm"`;
  return {
    ...figure,
    svg: figure.svg.replace(/width="[\d.]+mm" height="[\d.]+mm"/, size),
    scale: figure.scale.replace(
      /^Scale 1 : ([\d.]+)$/,
      (_, to: string) => `Scale about 1 : ${Number((Number(to) / by).toFixed(1))}`,
    ),
    width,
    height,
    ...(figure.drawn === undefined ? {} : { drawn: figure.drawn * by }),
  };
}
