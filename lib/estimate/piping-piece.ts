import type { Cover, Piece } from "../seams/types.ts";

/** The strips for the piping of a cover where they are laid with its other pieces, or null. */
export function pipingPiece(cover: Cover): Piece | null {
  return (
    cover.pieces.find(({ id, panel }) => panel === null && id === `${cover.solid}-piping`) ?? null
  );
}
