import type { Polygon } from "../plane/types.ts";
import { boundsOf } from "./list-cuts.ts";
import type { Cut, UsedStock } from "./types.ts";

/** What a free cut goes round: the outline of a part, or a hole in it. */
export interface FreeCut {
  readonly part: string;
  readonly ring: Polygon;
  readonly isHole: boolean;
}

/** The ring whose box is that of a free cut, holes before outlines; null when no part has it. */
export function findFreeCut({ of }: Cut, { places }: UsedStock): FreeCut | null {
  const isHere = (ring: Polygon): boolean => {
    const box = boundsOf(ring);
    return [...box.at, ...box.size].every(
      (value, i) => Math.abs(value - [...of.at, ...of.size][i]!) < 0.5,
    );
  };
  const rings = [
    ...places.flatMap(({ part, holes = [] }) =>
      holes.map((ring) => ({ part, ring, isHole: true })),
    ),
    ...places.flatMap(({ part, outline }) =>
      outline === null ? [] : [{ part, ring: outline, isHole: false }],
    ),
  ];
  return rings.find(({ ring }) => isHere(ring)) ?? null;
}
