import { boxesOverlap, growBox, segmentMeetsBox } from "../drawing/boxes.ts";
import { isInsideRings } from "../drawing/inside-point.ts";
import { measureText, textStyles } from "../drawing/measure-text.ts";
import type { Box } from "../drawing/types.ts";
import type { Mm, Point } from "../plane/types.ts";

/** Words on a full-size sheet; upright ones read downwards. */
export interface SheetWords {
  readonly at: Point;
  readonly words: string;
  readonly size: Mm;
  readonly anchor: "start" | "middle";
  readonly isUpright: boolean;
}

/** The part of a sheet that words may take, and what is in their way. Sheet millimetres, y down. */
export interface SheetRoom {
  /** What no other sheet covers or cuts off. */
  readonly window: Box;
  readonly lines: readonly (readonly Point[])[];
  /** The cut line. */
  readonly outline: readonly Point[];
}

/** Letters that hang, and letters that stand, as shares of the type size. @source Source Sans 3, OS/2 */
const [hang, stand] = [0.25, 0.72] as const;

/** White wanted round words. @source our choice: a pencil line and a trimming error */
const air: Mm = 1.2;

export function boxOfWords({ at: [x, y], words, size, anchor, isUpright }: SheetWords): Box {
  const width = (measureText(words, "label") * size) / textStyles.label.size;
  const start = anchor === "middle" ? -width / 2 : 0;
  return isUpright
    ? {
        left: x - hang * size,
        right: x + stand * size,
        top: y + start,
        bottom: y + start + width,
      }
    : {
        left: x + start,
        right: x + start + width,
        top: y - stand * size,
        bottom: y + hang * size,
      };
}

/** Whether something fits: wholly in the window, clear of every line and of what stands there already. */
export function isFreeOnSheet(
  box: Box,
  { window, lines }: SheetRoom,
  taken: readonly Box[],
): boolean {
  const wide = growBox(box, air);
  return (
    isWithin(wide, window) &&
    !taken.some((other) => boxesOverlap(wide, other)) &&
    !lines.some((chain) => chain.some((to, i) => i > 0 && segmentMeetsBox(chain[i - 1]!, to, wide)))
  );
}

/** Whether something lies wholly on the piece; a box that no line crosses does where its middle does. */
export const isOnPiece = ({ left, right, top, bottom }: Box, { outline }: SheetRoom): boolean =>
  isInsideRings([(left + right) / 2, (top + bottom) / 2], [outline]);

export const isWithin = (box: Box, window: Box): boolean =>
  box.left >= window.left &&
  box.right <= window.right &&
  box.top >= window.top &&
  box.bottom <= window.bottom;

/** Points of a window, the nearest to a point first. @source our choice: every 7 mm */
export function gridOver({ left, right, top, bottom }: Box, near: Point): readonly Point[] {
  const pitch = 7;
  const along = (from: Mm, to: Mm, through: Mm): readonly Mm[] => {
    const first = from + ((((through - from) % pitch) + pitch) % pitch);
    return Array.from({ length: Math.max(0, Math.floor((to - first) / pitch) + 1) }, (_, i) =>
      Number((first + i * pitch).toFixed(3)),
    );
  };
  const points = along(top, bottom, near[1]).flatMap((y) =>
    along(left, right, near[0]).map((x): Point => [x, y]),
  );
  const away = ([x, y]: Point): number => (x - near[0]) ** 2 + (y - near[1]) ** 2;
  return [...points].sort((a, b) => away(a) - away(b));
}

/** The window that two boxes share; upside down where they share none. */
export const meetOf = (a: Box, b: Box): Box => ({
  left: Math.max(a.left, b.left),
  right: Math.min(a.right, b.right),
  top: Math.max(a.top, b.top),
  bottom: Math.min(a.bottom, b.bottom),
});
