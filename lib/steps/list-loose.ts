import type { Work } from "../estimate/types.ts";
import { hemPiece } from "./hem-piece.ts";
import type { Step } from "./types.ts";

/**
 * A loose piece that is sewn to nothing is hemmed: one with hems of its own, or the only one of its
 * cloth, not mentioned in a step of the author's own. How several are joined, and what the author has in mind, the author says.
 */
export function listLoose(work: Work): Step[] {
  const { solids, pieces, words } = work.project;
  const attached = new Set(
    solids.flatMap(({ cover }) => (cover?.attach ?? []).map(({ piece }) => piece)),
  );
  const loose = work.pieces.filter(({ id }) => !attached.has(id));
  const hasHem = (id: string) => pieces.some((one) => one.id === id && one.hem !== undefined);
  const own = words.flatMap((part) =>
    part.kind === "before" ? [`${part.title} ${part.markdown}`] : [],
  );
  return loose
    .filter(
      ({ id, stock }) => hasHem(id) || loose.filter((one) => one.stock === stock).length === 1,
    )
    .filter(
      ({ edges }) =>
        edges.every(({ kind }) => kind === "hem") && edges.some(({ allowance }) => allowance > 0),
    )
    .filter(({ id, label }) => !own.some((text) => text.includes(label) || text.includes(id)))
    .map(({ id, edges }) =>
      hemPiece(id, { group: "Loose pieces", work, allowance: edges[0]?.allowance ?? 0 }),
    );
}
