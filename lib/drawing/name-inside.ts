import type { Polygon } from "../plane/types.ts";
import type { Piece } from "../seams/types.ts";
import { insidePoints } from "./inside-point.ts";
import { placeLabels } from "./place-labels.ts";
import { shortName } from "./short-name.ts";
import type { Ink } from "./types.ts";

/** The name of a piece on it, where there is room: the title of the figure says it too. */
export function nameInside(
  piece: Piece,
  rings: readonly Polygon[],
  others: readonly Ink[],
): readonly Ink[] {
  const candidates = insidePoints(rings, 120).map(
    (at) => ({ at, anchor: "middle", leader: null }) as const,
  );
  const label = { lines: [shortName(piece)], style: "name", candidates } as const;
  const placed = placeLabels([label], others);
  return placed.collisions.length === 0 ? placed.inks : [];
}
