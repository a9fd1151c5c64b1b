import type { Point, Polygon } from "../plane/types.ts";

/**
 * Split a simple counter-clockwise polygon into convex parts: ears are cut off one by one, then
 * parts that share an edge are joined again while the result stays convex.
 *
 * A convex polygon comes back alone. Corners on a straight line are dropped.
 *
 * @source Meisters 1975, "Polygons have ears"; Hertel and Mehlhorn 1983 for the joining
 */
export function splitConvex(polygon: Polygon): readonly Polygon[] {
  const corners = dropStraight(polygon);
  if (corners.length < 3) return [];
  if (isConvex(corners)) return [corners];
  return joinParts(cutEars(corners));
}

/** The polygon without repeated corners and corners on a straight line. */
export function dropStraight(polygon: Polygon): Polygon {
  let corners = polygon.filter((corner, i) => {
    const [x, y] = polygon[(i + 1) % polygon.length]!;
    return Math.abs(x - corner[0]) > nothing || Math.abs(y - corner[1]) > nothing;
  });
  for (;;) {
    const kept = corners.filter((corner, i) => {
      const before = corners[(i + corners.length - 1) % corners.length]!;
      const after = corners[(i + 1) % corners.length]!;
      const base = Math.hypot(after[0] - before[0], after[1] - before[1]);
      return Math.abs(turnOf(before, corner, after)) > nothing * Math.max(base, nothing);
    });
    if (kept.length === corners.length || kept.length < 3) return kept;
    corners = kept;
  }
}

/** Lengths below this count as nothing: a millionth of a millimetre. */
const nothing = 1e-6;

/** Twice the area of a triangle: positive when it turns left. */
const turnOf = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function isConvex(corners: Polygon): boolean {
  return corners.every(
    (corner, i) =>
      turnOf(corner, corners[(i + 1) % corners.length]!, corners[(i + 2) % corners.length]!) >= 0,
  );
}

function cutEars(polygon: Polygon): Polygon[] {
  const left = [...polygon];
  const ears: Polygon[] = [];
  while (left.length > 3) {
    const ear = findEar(left);
    const size = left.length;
    ears.push([left[(ear + size - 1) % size]!, left[ear]!, left[(ear + 1) % size]!]);
    left.splice(ear, 1);
  }
  ears.push(left);
  return ears.filter(([a, b, c]) => turnOf(a!, b!, c!) > 0);
}

/** The ear whose smallest angle is widest, so that slivers are avoided; the first corner if none. */
function findEar(left: readonly Point[]): number {
  let best = 0;
  let bestShape = -1;
  for (let i = 0; i < left.length; i++) {
    const a = left[(i + left.length - 1) % left.length]!;
    const b = left[i]!;
    const c = left[(i + 1) % left.length]!;
    if (turnOf(a, b, c) <= 0) continue;
    if (left.some((p) => p !== a && p !== b && p !== c && isWithin(p, a, b, c))) continue;
    const longest = Math.max(side(a, b), side(b, c), side(c, a));
    const shape = turnOf(a, b, c) / longest ** 2;
    if (shape > bestShape) [best, bestShape] = [i, shape];
  }
  return best;
}

const side = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

const isWithin = (p: Point, a: Point, b: Point, c: Point): boolean =>
  turnOf(a, b, p) >= 0 && turnOf(b, c, p) >= 0 && turnOf(c, a, p) >= 0;

function joinParts(parts: Polygon[]): readonly Polygon[] {
  const list = [...parts];
  for (let i = 0; i < list.length; i++) {
    for (let j = i + 1; j < list.length; j++) {
      const joined = joinPair(list[i]!, list[j]!);
      if (joined === null) continue;
      list[i] = joined;
      list.splice(j, 1);
      j = i;
    }
  }
  return list;
}

/** The two parts as one convex polygon, or null. */
function joinPair(one: Polygon, two: Polygon): Polygon | null {
  for (let i = 0; i < one.length; i++) {
    const from = one[i]!;
    const to = one[(i + 1) % one.length]!;
    const j = two.findIndex((p, k) => p === to && two[(k + 1) % two.length] === from);
    if (j < 0) continue;
    const rest = [...two.slice(j + 1), ...two.slice(0, j + 1)].slice(1, -1);
    const joined = [...one.slice(0, i + 1), ...rest, ...one.slice(i + 1)];
    return isConvex(joined) ? joined : null;
  }
  return null;
}
