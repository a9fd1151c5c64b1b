import type { Ratio } from "../plane/types.ts";
import type { Project } from "./types.ts";

/** Share of its length that a stock loses in the wash; 0 for anything but cloth. */
export function shrinkOf(stock: string, project: Pick<Project, "stock">): Ratio {
  const cloth = project.stock.find(({ id }) => id === stock);
  return cloth?.kind === "fabric" ? cloth.shrink : 0;
}
