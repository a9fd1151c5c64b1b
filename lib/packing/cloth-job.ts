import type { Degrees, Mm } from "../plane/types.ts";
import type { FabricStock } from "../project/types.ts";
import type { LayPiece } from "../seams/types.ts";
import { makeForm } from "./place-forms.ts";
import { type StripKind, makeStripJob } from "./strip-job.ts";
import type { StripJob } from "./strip-types.ts";

/** Width a piece may lie on: the cloth without its two selvedges. */
export const usableWidth = (cloth: FabricStock): Mm => cloth.width - 2 * cloth.selvedge;

/** Which pieces fit the cloth at all, and which are too wide at every turn they may take. */
export function fitPieces(
  pieces: readonly LayPiece[],
  cloth: FabricStock,
): { readonly fitting: readonly LayPiece[]; readonly tooWide: readonly LayPiece[] } {
  const room = usableWidth(cloth) + 1e-6;
  const fits = (piece: LayPiece): boolean =>
    (repeatOf(piece, cloth).startX ?? 0) +
      (piece.printOrigin === undefined ? 0 : makeForm(piece.outline, 0, false).width) <=
      room &&
    allowedTurns(piece, cloth).some((turn) => makeForm(piece.outline, turn, false).width <= room);
  return { fitting: pieces.filter(fits), tooWide: pieces.filter((piece) => !fits(piece)) };
}

/** The strip job of `sets` sets of pieces on a cloth; copies of a piece follow one another. */
export function makeClothJob(
  pieces: readonly LayPiece[],
  cloth: FabricStock,
  sets: number,
  walls: readonly Mm[] = [],
): StripJob {
  const kinds = pieces.map((piece): StripKind => ({
    outline: piece.outline,
    copies: piece.copies * sets,
    turns: allowedTurns(piece, cloth),
    flips: cloth.isTwoFaced && piece.printOrigin === undefined ? [false, true] : [false],
    ...repeatOf(piece, cloth),
  }));
  return makeStripJob(usableWidth(cloth), kinds, walls);
}

/** Where a piece may start under the repeat: at its beginning, or where its own point meets it. */
function repeatOf(
  { isUpright, printOrigin }: LayPiece,
  { repeat }: FabricStock,
): Pick<StripKind, "stepX" | "stepY" | "startX" | "startY"> {
  if (!isUpright && printOrigin === undefined) return { stepX: 0, stepY: 0 };
  const [stepX, stepY] = [repeat?.across ?? 0, repeat?.along ?? 0];
  const [x, y] = printOrigin ?? [0, 0];
  return { stepX, stepY, startX: restOf(-x, stepX), startY: restOf(-y, stepY) };
}

/** What is left over whole steps, from 0 up to one step. */
function restOf(value: Mm, step: Mm): Mm {
  if (step === 0) return 0;
  const rest = ((value % step) + step) % step;
  return step - rest < 1e-9 ? 0 : rest;
}

/**
 * Turns a piece may take. A piece that needs no upright print may lie by any quarter turn.
 *
 * @source common practice, no source
 */
export function allowedTurns(piece: LayPiece, cloth: FabricStock): readonly Degrees[] {
  // Print that has to meet is laid one way only.
  if (piece.printOrigin !== undefined) return [0];
  if (!piece.isUpright) return [0, 90, 180, 270];
  switch (cloth.direction) {
    case "one-way":
      return [0];
    case "two-way":
      return [0, 180];
    case "any":
      return [0, 90, 180, 270];
  }
}
