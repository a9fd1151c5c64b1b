import type { Work } from "../estimate/types.ts";
import { hemPiece } from "./hem-piece.ts";
import type { Step } from "./types.ts";

/** Loose pieces that are hemmed all round and sewn to nothing. How others are joined, the author says. */
export function listLoose(work: Work): Step[] {
  const attached = new Set(
    work.project.solids.flatMap(({ cover }) => (cover?.attach ?? []).map(({ piece }) => piece)),
  );
  return work.pieces
    .filter(
      ({ id, edges }) =>
        !attached.has(id) && edges.length > 0 && edges.every(({ kind }) => kind === "hem"),
    )
    .map(({ id, edges }) =>
      hemPiece(id, { group: "Loose pieces", work, allowance: edges[0]?.allowance ?? 0 }),
    );
}
