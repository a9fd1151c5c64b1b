import type { Mm } from "../plane/types.ts";

/** A load that may tip a thing over one edge of its base. */
export interface EdgeLoad {
  /** Newtons downward. */
  readonly down: number;
  /** Distance of that load inside the edge; negative beyond it. */
  readonly inside: Mm;
  /** Newtons outward. */
  readonly push: number;
  /** Height at which the push acts. */
  readonly height: Mm;
  /** Newtons of the thing's own weight. */
  readonly weight: number;
  /** From the edge of the base to the centre of mass. */
  readonly toCentre: Mm;
}

/**
 * Moment that keeps a thing standing less the one that tips it, in newton millimetres; negative when
 * it would tip. Soft foam is outside the scope of the tests, so this is advice.
 *
 * @source EN 1022 and ISO 7174-1 (loads and where they act), our moment about the edge
 */
export function edgeLoadMargin(load: EdgeLoad): number {
  const { down, inside, push, height, weight, toCentre } = load;
  return down * inside + weight * toCentre - push * height;
}
