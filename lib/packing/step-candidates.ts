import type { Mm } from "../plane/types.ts";
import { type NoFit, perEdge } from "./no-fit.ts";
import type { StripItem, StripPlace } from "./strip-types.ts";

interface PlacedRegion {
  readonly region: NoFit;
  readonly at: StripPlace;
}

/**
 * Offer the places of an item that may start only at multiples of a repeat, lowest first, until one
 * is taken. Where only one of the two repeats counts, the other way the item stops at the regions.
 */
export function stepCandidates(
  item: StripItem,
  room: Mm,
  regions: readonly PlacedRegion[],
  top: Mm,
  consider: (x: Mm, y: Mm) => void,
  isTaken: () => boolean,
): void {
  if (item.stepY === 0) {
    for (const x of multiples(item.stepX, room, item.startX)) {
      for (const y of [0, top, ...heightsAt(regions, x)]) consider(x, y);
    }
    return;
  }
  for (let row = 0; !isTaken() && row * item.stepY <= top + item.stepY; row++) {
    const y = row * item.stepY + (item.startY ?? 0);
    const across =
      item.stepX > 0 ? multiples(item.stepX, room, item.startX) : [0, ...placesAt(regions, y)];
    for (const x of across) consider(x, y);
  }
}

const multiples = (step: Mm, room: Mm, start: Mm = 0): readonly Mm[] =>
  Array.from(
    { length: Math.max(0, Math.floor((room - start) / step + 1e-9) + 1) },
    (_, i) => start + i * step,
  );

/** Heights at which region edges cross an upright line. */
function heightsAt(regions: readonly PlacedRegion[], x: Mm): readonly Mm[] {
  return regions.flatMap(({ region: { edges }, at }) => {
    const found: Mm[] = [];
    for (let i = 0; i < edges.length; i += perEdge) {
      const [ax, bx] = [edges[i]! + at.x, edges[i + 2]! + at.x];
      const [ay, by] = [edges[i + 1]! + at.y, edges[i + 3]! + at.y];
      if (ax <= x !== bx <= x) found.push(ay + ((x - ax) * (by - ay)) / (bx - ax));
      else if (ax === x) found.push(ay);
    }
    return found;
  });
}

/** Places across at which region edges cross a level line. */
function placesAt(regions: readonly PlacedRegion[], y: Mm): readonly Mm[] {
  return regions.flatMap(({ region: { edges }, at }) => {
    const found: Mm[] = [];
    for (let i = 0; i < edges.length; i += perEdge) {
      const [ax, bx] = [edges[i]! + at.x, edges[i + 2]! + at.x];
      const [ay, by] = [edges[i + 1]! + at.y, edges[i + 3]! + at.y];
      if (ay <= y !== by <= y) found.push(ax + ((y - ay) * (bx - ax)) / (by - ay));
      else if (ay === y) found.push(ax);
    }
    return found;
  });
}
