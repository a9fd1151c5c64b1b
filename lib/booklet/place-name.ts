import { distanceToRings, isInsideRings } from "../drawing/inside-point.ts";
import { measureText, textStyles } from "../drawing/measure-text.ts";
import type { Mm, Point, Polygon } from "../plane/types.ts";

/** White wanted between a name and the cut line. @source our choice: shears wander a millimetre or two */
const clear: Mm = 4;

/**
 * Where the name of a piece begins on its sheet: at the asked place, or the nearest above or below it
 * that keeps clear of the cut line; where the piece is too slight for that, the place with most room.
 */
export function placeName(
  words: string,
  [x, y]: Point,
  { outline, size }: { readonly outline: Polygon; readonly size: Mm },
): Point {
  const width = (measureText(words, "label") * size) / textStyles.label.size;
  const places = shifts.map((by): Point => [x, y + by]);
  const room = places.map((place) => roomRound(place, { outline, width, size }));
  const first = room.findIndex((each) => each >= clear);
  return places[first < 0 ? room.indexOf(Math.max(...room)) : first]!;
}

/** Nearest first; as far as the arrow beside the name is long. */
const shifts: readonly Mm[] = [0, -4, 4, -8, 8, -12, 12];

/** Least distance from the letters to the outline; negative where one lies outside. */
function roomRound(
  [x, y]: Point,
  { outline, width, size }: { readonly outline: Polygon; readonly width: Mm; readonly size: Mm },
): Mm {
  const steps = Math.max(2, Math.ceil(width / 4));
  const points = Array.from({ length: steps + 1 }, (_, i) => x + (width * i) / steps).flatMap(
    (across): Point[] => [
      [across, y],
      [across, y - size],
    ],
  );
  const signed = points.map((point) => {
    const away = distanceToRings(point, [outline]);
    return isInsideRings(point, [outline]) ? away : -away;
  });
  return Math.min(...signed);
}
