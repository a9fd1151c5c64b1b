import type { LayPlace } from "./types.ts";

/**
 * Number the copies of each piece from the start of the cloth on, and across from the left: copies are
 * alike, so that a list of them can be followed with the chalk. The pieces stay in their order.
 */
export function numberCopies(places: readonly LayPlace[]): readonly LayPlace[] {
  const pieces = [...new Set(places.map(({ piece }) => piece))];
  return pieces.flatMap((piece) =>
    places
      .filter((place) => place.piece === piece)
      .toSorted((a, b) => a.y - b.y || a.x - b.x)
      .map((place, i) => ({ ...place, copy: i + 1 })),
  );
}
