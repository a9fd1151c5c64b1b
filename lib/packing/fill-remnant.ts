import type { FabricStock } from "../project/types.ts";
import type { LayPiece } from "../seams/types.ts";
import { allowedTurns } from "./cloth-job.ts";
import { type Remnant, type RemnantPlace, fillGround } from "./fill-ground.ts";
import { placeForms } from "./place-forms.ts";

/**
 * Lay as many pieces as will go on a remnant. Pieces that must start at a repeat are left for whole
 * cloth: nobody knows how the print lies on a remnant.
 */
export function fillRemnant(
  remnant: Remnant,
  pieces: readonly LayPiece[],
  cloth: FabricStock,
): readonly RemnantPlace[] {
  const flips = cloth.isTwoFaced ? [false, true] : [false];
  return fillGround(
    remnant,
    pieces.map((piece) => ({
      outline: piece.outline,
      copies: piece.isUpright && cloth.repeat !== null ? 0 : piece.copies,
      forms: placeForms(piece.outline, allowedTurns(piece, cloth), flips),
    })),
  );
}
