import type { Mm } from "../plane/types.ts";

/** Load at the edge of a seat as the stability tests set it. */
export interface EdgeLoad {
  /** Distance the seat juts out beyond the base it stands on. */
  readonly overhang: Mm;
  readonly seatHeight: Mm;
  /** Newtons of the thing's own weight. */
  readonly weight: number;
  /** From the edge of the base to the centre of mass. */
  readonly toCentre: Mm;
}

/** The tests' figures: newtons down near the edge, newtons sideways at seat height. */
const down = 600;
const sideways = 20;
/**
 * Distance of the load from the edge of the seat.
 *
 * @source ISO 7174-1:1988, 50 mm; EN 1022 has 60 mm, and the smaller is the safer
 */
const loadFromEdge: Mm = 50;

/**
 * Moment that keeps a seat standing less the one that tips it, in newton millimetres; negative when
 * it would tip. Soft foam is outside the scope of the tests, so this is advice.
 *
 * @source EN 1022 and ISO 7174-1 forward test, 600 N down and 20 N forward, our moment about the edge
 */
export function frontLoadMargin({ overhang, seatHeight, weight, toCentre }: EdgeLoad): number {
  return down * (loadFromEdge - overhang) + weight * toCentre - sideways * seatHeight;
}
