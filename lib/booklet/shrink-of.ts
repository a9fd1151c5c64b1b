import type { Ratio } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import type { Piece } from "../seams/types.ts";

/** Share of its length that the cloth of a piece loses in the wash; 0 for anything but cloth. */
export function shrinkOf({ stock }: Piece, project: Pick<Project, "stock">): Ratio {
  const cloth = project.stock.find(({ id }) => id === stock);
  return cloth?.kind === "fabric" ? cloth.shrink : 0;
}
