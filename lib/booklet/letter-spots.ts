import type { Box } from "../drawing/types.ts";
import { add, distance, fromAngle, leftOf, scale, subtract } from "../plane/points.ts";
import { directionAlong, pointAlong, segmentLength } from "../plane/segments.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { Mark, Notch, PieceEdge } from "../seams/types.ts";
import { boxOfWords } from "./place-on-sheet.ts";
import type { SheetWords } from "./place-on-sheet.ts";
import { markReach } from "./piece-strokes.ts";
import type { OnSheet } from "./sheet-marks.ts";

const [letterSize, notchSize, markSize]: readonly [Mm, Mm, Mm] = [5, 3, 3.5];
/** From a line to the words beside it, nearest first. @source our choice */
const gaps: readonly Mm[] = [1.6, 4, 8];
/** Along a line away from where the words should stand. */
const slides: readonly Mm[] = [0, 4, -4, 8, -8, 13, -13];
/** From one place for a letter to the next along its edge. */
const pitch: Mm = 9;

/** Places for the letter of a seam: inside the seam line, the nearest to a point first. */
export function letterSpots(
  { seam, segments }: PieceEdge,
  onSheet: OnSheet,
  near: Point,
): readonly SheetWords[] {
  if (seam === null) return [];
  const places = segments.flatMap((segment) => {
    const steps = Math.max(1, Math.ceil(segmentLength(segment) / pitch / 2)) * 2;
    return Array.from({ length: steps - 1 }, (_, i) => {
      const at = pointAlong(segment, (i + 1) / steps);
      const inward = add(at, leftOf(directionAlong(segment, (i + 1) / steps)));
      const [from, to] = [onSheet(at), onSheet(inward)];
      // To a tenth, so that rounding never chooses between two places as near.
      return { at: from, to, away: Math.round(distance(from, near) * 10) };
    });
  });
  const ordered = [...places].sort((a, b) => a.away - b.away);
  return gaps.flatMap((gap) =>
    ordered.map(({ at, to }) => beside(seam, { at, to, gap, size: letterSize })),
  );
}

/** Places for the panel that alone has a notch: inside the seam line beside the notch. */
export function notchSpots(
  { at, towards, on }: Notch,
  onSheet: OnSheet,
  window: Box,
): readonly SheetWords[] {
  const foot = onSheet(at);
  if (on === undefined || !isIn(foot, window)) return [];
  const inward = onSheet(add(at, fromAngle(towards, -1)));
  const across = leftOf(subtract(inward, foot));
  return gaps.flatMap((gap) =>
    slides.map((slide) => {
      const by = scale(across, slide);
      return beside(on, { at: add(foot, by), to: add(inward, by), gap, size: notchSize });
    }),
  );
}

/** Places round a cross for its name. */
export function markSpots(
  { at, label, kind }: Mark,
  onSheet: OnSheet,
  window: Box,
): readonly SheetWords[] {
  const centre = onSheet(at);
  if (!isIn(centre, window)) return [];
  const reach = markReach(kind);
  const sides: readonly Point[] = [
    [1, -1],
    [-1, -1],
    [1, 1],
    [-1, 1],
    [0, -1],
    [0, 1],
  ].map(([x, y]): Point => [x!, y!]);
  return gaps.flatMap((gap) =>
    sides.map((side) => {
      const from = add(centre, [0, side[0] === 0 ? side[1] * reach : 0]);
      return beside(label, { at: from, to: add(from, side), gap, size: markSize });
    }),
  );
}

/** Words centred on a ray from a point, so far that their box keeps the gap from what lies across it. */
function beside(
  words: string,
  {
    at,
    to,
    gap,
    size,
  }: { readonly at: Point; readonly to: Point; readonly gap: Mm; readonly size: Mm },
): SheetWords {
  const still: SheetWords = { at: [0, 0], words, size, anchor: "middle", isUpright: false };
  const { left, right, top, bottom } = boxOfWords(still);
  const away = subtract(to, at);
  const length = Math.hypot(...away) || 1;
  const ray: Point = [away[0] / length, away[1] / length];
  const reach =
    (Math.abs(ray[0]) * (right - left)) / 2 + (Math.abs(ray[1]) * (bottom - top)) / 2 + gap;
  const centre = add(at, scale(ray, reach));
  return { ...still, at: [centre[0], centre[1] - (top + bottom) / 2] };
}

const isIn = ([x, y]: Point, { left, right, top, bottom }: Box): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;
