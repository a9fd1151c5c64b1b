import type { Face, Solid } from "../solids/types.ts";
import type { Cover } from "../seams/types.ts";

/** The faces a zip runs along, and whether one of them is turned towards whoever sits there. */
export interface ZipPlace {
  readonly along: readonly string[];
  readonly isInReach: boolean;
}

/**
 * Where the zip of a cover lies, read off the edges of its opening; one put across a face lies between that
 * face's two halves. A seam is in reach unless both its faces are hidden, underneath or at the back. Null where the opening is in no seam of the form.
 *
 * @source our choice: a child on the seat sees and handles front, sides and top
 */
export function zipPlace(
  { opening }: Pick<Cover, "opening">,
  { edges, faces }: Pick<Solid, "edges" | "faces">,
): ZipPlace | null {
  const open = edges.filter(({ id }) => opening?.edges.includes(id));
  const pairs = open.map((edge) => faces.filter(({ id }) => edge.faces.includes(id)));
  if (pairs.length === 0) return null;
  return {
    along: [...new Set(pairs.flat().map(({ label }) => label))],
    isInReach: pairs.some((pair) => !pair.every(isAway)),
  };
}

/** Underneath, at the back, or covered by something else. */
function isAway({ isVisible, normal }: Face): boolean {
  return !isVisible || normal[2] < -0.5 || normal[1] > 0.9;
}
