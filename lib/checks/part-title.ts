import type { Project } from "../project/types.ts";

/** What a cut part is called at the head of a sentence: "Block seat", or the piece's own label. */
export function partTitle(part: string, { solids, pieces }: Project): string {
  const [solid, block] = part.split("/");
  if (block !== undefined && solids.some(({ id }) => id === solid)) {
    return solids.length > 1 ? `Block ${block} of ${solid}` : `Block ${block}`;
  }
  return pieces.find(({ id }) => id === part)?.label ?? part;
}
