import { checkDiagonals, type Diagonal } from "../plane/check-diagonals.ts";
import { mergeShortLegs } from "../plane/merge-short-legs.ts";
import type { Piece } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import { smallestStep } from "../units/smallest-step.ts";
import type { LengthStyle } from "../units/types.ts";
import { drawDimension } from "./draw-dimension.ts";
import { findCollisions } from "./find-collisions.ts";
import type { Ink, ToPaper } from "./types.ts";

/**
 * The first line that the words of the walk say to measure, in real millimetres; null where they name
 * none.
 */
export const checkDiagonal = ({ outline }: Piece, style: LengthStyle): Diagonal | null =>
  checkDiagonals(mergeShortLegs(outline.outer, smallestStep(style)))[0] ?? null;

/** The diagonal with its length, the figure slid along to where it is clear of other lines. */
export function drawDiagonal(
  diagonal: Diagonal,
  toPaper: ToPaper,
  { style, others }: { readonly style: LengthStyle; readonly others: readonly Ink[] },
): Ink[] {
  const text = `check ${formatLength(diagonal.length, style)}`;
  const [from, to] = [toPaper(diagonal.from), toPaper(diagonal.to)];
  const at = (share: number) => drawDimension({ from, to, offset: [0, 0], text, share });
  const shares = [0.3, 0.7, 0.5, 0.2, 0.8, 0.4, 0.6];
  const clear = shares.find((share) => {
    const inks = at(share).filter((ink) => ink.kind === "text");
    return findCollisions([...others.filter((ink) => ink.kind === "path"), ...inks]).length === 0;
  });
  // No room for its figure, or a strip that it would only smudge: left to the words beside the figure.
  const [across, up] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  const fits = Math.hypot(across, up) > 34 && Math.min(across, up) > 9;
  return clear === undefined || !fits ? [] : at(clear);
}
