import type { Mm } from "../plane/types.ts";
import type { Cover, Piece } from "../seams/types.ts";

/** Length of all seams of a cover that are sewn, open ones left out. */
export function sewnLength(cover: Cover): Mm {
  return sum(
    cover.seams.filter((seam) => seam.state === "sewn").map((seam) => Math.max(...seam.length)),
  );
}

/** Length of the seams of a cover that carry piping. */
export function pipedLength(cover: Cover): Mm {
  return sum(cover.seams.filter((seam) => seam.isPiped).map((seam) => Math.max(...seam.length)));
}

/** Once round every loose piece: its hems and seams. A raw edge, without allowance, is not sewn. */
export function looseLength(pieces: readonly Piece[]): Mm {
  return sum(
    pieces.map(
      (piece) =>
        piece.cut *
        sum(piece.edges.filter((edge) => edge.allowance > 0).map((edge) => edge.length)),
    ),
  );
}

function sum(lengths: readonly Mm[]): Mm {
  return lengths.reduce((total, length) => total + length, 0);
}
