import type { Mm, Point } from "../plane/types.ts";

/** One edge of the base that a thing can tip over. */
export interface TipSide {
  /** Where it lies, in words: "front", "back left". */
  readonly name: string;
  /** Outward, of length one. */
  readonly normal: Point;
  /** Distance of the edge from the origin along the normal. */
  readonly reach: Mm;
}

/** Edges shorter than this are corners of a curve and never turned on alone, in mm. */
const shortest: Mm = 1;

/** A base of more corners than this is round, and no side of it has a name. */
const most = 12;

/** The edges of a base given counter-clockwise. */
export function tipSides(base: readonly Point[]): TipSide[] {
  const isRound = base.length > most;
  return base.flatMap(([x, y], index) => {
    const [nextX, nextY] = base[(index + 1) % base.length] ?? [x, y];
    const [alongX, alongY] = [nextX - x, nextY - y];
    const length = Math.hypot(alongX, alongY);
    if (length < shortest) return [];
    const normal: Point = [alongY / length, -alongX / length];
    return [
      { name: isRound ? "rim" : nameOf(normal), normal, reach: x * normal[0] + y * normal[1] },
    ];
  });
}

/** How far a point lies inside an edge; negative outside. */
export function insideOf({ normal, reach }: TipSide, [x, y]: readonly [Mm, Mm, ...Mm[]]): Mm {
  return reach - (x * normal[0] + y * normal[1]);
}

/** The sine of about 20°: nearer to an axis than that the side is named by it alone. */
const aslant = 0.35;

function nameOf([x, y]: Point): string {
  const words = [
    ...(Math.abs(y) > aslant ? [y < 0 ? "front" : "back"] : []),
    ...(Math.abs(x) > aslant ? [x < 0 ? "left" : "right"] : []),
  ];
  return words.join(" ");
}
