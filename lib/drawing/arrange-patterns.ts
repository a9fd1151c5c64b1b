import type { Mm, Point } from "../plane/types.ts";
import type { Piece } from "../seams/types.ts";
import { boxOfPoints } from "./boxes.ts";
import { clothPieces } from "./cloth-pieces.ts";
import { flatView } from "./flat-view.ts";
import { flowBoxes } from "./flow-boxes.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import type { DrawingInput, ToPaper } from "./types.ts";

/** A piece at full size on the great field that the sheets are cut from. */
export interface PlacedPattern {
  readonly piece: Piece;
  readonly toField: ToPaper;
  /** Pieces cut from the same pattern, and from the pattern turned over. */
  readonly also: readonly string[];
  readonly turnedOver: readonly string[];
}

/** White between patterns on the field. */
const GAP: Mm = 12;

/**
 * The pieces worth a paper pattern: every outline that is not a plain rectangle, or all of them
 * where there is no other. A twin or mirror image shares its pattern.
 *
 * @source our choice: a rectangle is drawn on the cloth faster than its paper is glued together
 */
export function choosePatterns(input: DrawingInput): Omit<PlacedPattern, "toField">[] {
  const all = clothPieces(input);
  const shaped = all.filter(({ piece }) => !isRectangle(piece));
  const wanted = shaped.length > 0 ? shaped : all;
  const sameAs = ({ panel }: (typeof all)[number]) => panel?.sameAs ?? null;
  const stands = (id: string | null) =>
    id !== null && wanted.some(({ piece, panel }) => piece.id === id || panel?.id === id);
  const named = (id: string | null, { piece, panel }: (typeof all)[number]) =>
    id !== null && (piece.id === id || panel?.id === id);
  return wanted
    .filter((item) => !stands(item.piece.mirrorOf) && !stands(sameAs(item)))
    .map((item) => ({
      piece: item.piece,
      also: wanted.filter((other) => named(sameAs(other), item)).map(({ piece }) => piece.id),
      turnedOver: wanted
        .filter(({ piece }) => named(piece.mirrorOf, item))
        .map(({ piece }) => piece.id),
    }));
}

function isRectangle({ outline }: Piece): boolean {
  return (
    outline.holes.length === 0 &&
    outline.outer.length === 4 &&
    outline.outer.every(
      ({ kind, from, to }) =>
        kind === "line" && Math.min(Math.abs(from[0] - to[0]), Math.abs(from[1] - to[1])) < 0.1,
    )
  );
}

/** Patterns in rows on a field of a given width, tallest first. */
export function arrangePatterns(
  patterns: readonly Omit<PlacedPattern, "toField">[],
  width: Mm,
): PlacedPattern[] {
  const still = flatView(1);
  const sized = patterns
    .map((pattern) => ({ pattern, box: boxOfPoints(outlinePoints(pattern.piece, still)) }))
    .sort((a, b) => b.box.bottom - b.box.top - (a.box.bottom - a.box.top));
  const shifts = flowBoxes(
    sized.map(({ box }) => box),
    width,
    GAP,
  );
  return sized.map(({ pattern }, index) => {
    const [dx, dy] = shifts[index] ?? [0, 0];
    return { ...pattern, toField: flatView(1, [dx + GAP, dy + GAP]) };
  });
}

/** The cut line on the field, flattened finely enough for telling which sheets it crosses. */
export function outlinePoints({ outline }: Piece, toField: ToPaper): Point[] {
  return flattenPath(pathOfLoop(outline.outer, toField), 0.2);
}
