import type { Cover, Piece } from "../seams/types.ts";
import { slugOf } from "./make-notice.ts";

/** Id of the page that shows a panel of a cover, or a loose piece. */
export const pieceAnchor = (piece: Piece, cover: Cover | null): string =>
  `piece-${slugOf(cover?.solid ?? "loose")}-${slugOf(piece.id)}`;

/** Id of the drawing of one slab, sheet or board. */
export const cutAnchor = (kind: string, stock: string, number: number): string =>
  `${kind}-${slugOf(stock)}-${number}`;
