import type { Figure } from "../drawing/types.ts";
import type { UsedStock } from "../packing/types.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";

/** The only sheet of its part has a page to fill. */
const soleRooms: readonly FigureRoom[] = [110, 95, 80].map((height) => ({ width: 165, height }));
/** Room that leaves the cuts and the parts on the same page where they can be. */
const sheetRooms: readonly FigureRoom[] = [
  { width: 165, height: 50 },
  { width: 165, height: 60 },
  { width: 165, height: 80 },
  { width: 165, height: 100 },
];
const wideRooms: readonly FigureRoom[] = [
  { width: 165, height: 110 },
  { width: 165, height: 140 },
];

/** More cuts than this want more room, so that their numbers do not hide the parts. @source our choice */
const fewCuts = 8;

/** The rooms to try for the drawing of one sheet. */
export function roomsFor(
  { cuts }: UsedStock,
  { isSole }: { readonly isSole: boolean },
): readonly FigureRoom[] {
  if (cuts.length > fewCuts) return wideRooms;
  return isSole ? soleRooms : sheetRooms;
}

/** A smaller drawing than this share of the largest is taken only where no other is clear. @source our choice */
const leastShare = 0.4;

/**
 * In the first room in which its labels keep clear and its parts are not far smaller than they could be,
 * else in the largest.
 */
export function sheetFigure(
  id: string,
  drawings: FigureSource,
  rooms: readonly FigureRoom[],
): Figure | null {
  if (!drawings.ids.includes(id)) return null;
  const largest = Math.max(...rooms.map((room) => drawClear(drawings, id, [room])?.drawn ?? 0));
  return (
    drawClear(drawings, id, rooms, ({ drawn = 0 }) => drawn >= leastShare * largest) ??
    drawings.draw(id, sheetRooms.at(-1))
  );
}
