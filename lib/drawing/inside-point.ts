import type { Mm, Point, Polygon } from "../plane/types.ts";

/** Whether a point lies inside rings taken together: holes count as outside. */
export function isInsideRings([x, y]: Point, rings: readonly Polygon[]): boolean {
  let isInside = false;
  for (const ring of rings) {
    for (let i = 0, before = ring.length - 1; i < ring.length; before = i, i += 1) {
      const [ax, ay] = ring[before]!;
      const [bx, by] = ring[i]!;
      if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) isInside = !isInside;
    }
  }
  return isInside;
}

/** Distance from a point to the nearest side of some rings. */
export function distanceToRings([x, y]: Point, rings: readonly Polygon[]): Mm {
  let least = Infinity;
  let leastSquare = Infinity; // a root is taken only where the square comes near the least
  for (const ring of rings) {
    for (let i = 0, before = ring.length - 1; i < ring.length; before = i, i += 1) {
      const [ax, ay] = ring[before]!;
      const dx = ring[i]![0] - ax;
      const dy = ring[i]![1] - ay;
      const square = dx * dx + dy * dy;
      const share = square === 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / square;
      const t = Math.min(1, Math.max(0, share));
      const across = x - ax - t * dx;
      const up = y - ay - t * dy;
      const distance = across * across + up * up;
      if (distance > leastSquare * (1 + 1e-9)) continue;
      leastSquare = Math.min(leastSquare, distance);
      least = Math.min(least, Math.hypot(across, up));
    }
  }
  return least;
}

/**
 * Points inside rings, roomiest first, for standing labels on. A grid is enough: labels are large
 * beside its pitch. Empty when the rings have no inside.
 */
export function insidePoints(rings: readonly Polygon[], count = 120): Point[] {
  const xs = rings.flat().map(([x]) => x);
  const ys = rings.flat().map(([, y]) => y);
  if (xs.length === 0) return [];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const [columns, rows] = gridOf(right - left, bottom - top);
  const found: { at: Point; room: Mm }[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const at: Point = [
        left + ((column + 0.5) * (right - left)) / columns,
        top + ((row + 0.5) * (bottom - top)) / rows,
      ];
      if (isInsideRings(at, rings)) found.push({ at, room: distanceToRings(at, rings) });
    }
  }
  const centre: Point = [(left + right) / 2, (top + bottom) / 2];
  const far = ({ at }: { at: Point }) => Math.hypot(at[0] - centre[0], at[1] - centre[1]);
  const rank = (item: { at: Point; room: Mm }) => Math.round(item.room * 2) - far(item) / 50;
  return found
    .sort((a, b) => rank(b) - rank(a) || a.at[1] - b.at[1] || a.at[0] - b.at[0])
    .slice(0, count)
    .map(({ at }) => at);
}

/** About twenty points along the longer side, an odd number so that the middle is among them. */
function gridOf(width: Mm, height: Mm): [number, number] {
  const pitch = Math.max(width, height) / 21 || 1;
  const odd = (length: Mm) => 2 * Math.floor(length / pitch / 2) + 1;
  return [Math.max(3, odd(width)), Math.max(3, odd(height))];
}
