import type { Panel } from "../panels/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import type { DrawingInput } from "./types.ts";

export interface ClothPiece {
  readonly piece: Piece;
  readonly panel: Panel | null;
  readonly cover: Cover | null;
}

/** Every piece of cloth with the panel and cover it was made of, covers first. */
export function clothPieces({ covers, pieces }: DrawingInput): ClothPiece[] {
  const covered = covers.flatMap((cover) =>
    cover.pieces.map((piece) => ({
      piece,
      cover,
      panel: cover.panels.find(({ id }) => id === piece.panel) ?? null,
    })),
  );
  return [...covered, ...pieces.map((piece) => ({ piece, panel: null, cover: null }))];
}
