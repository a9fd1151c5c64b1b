import type { Work } from "../estimate/types.ts";
import type { CutPlan, UsedStock } from "../packing/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { partLabel } from "./part-label.ts";

/** "panel P1", or "panel P1 of pad" where another cover has a panel of that name. */
export function panelName(cover: Cover, panel: string, { covers }: Work): string {
  const isShared = covers.some((one) => one !== cover && one.panels.some(({ id }) => id === panel));
  return isShared ? `panel ${panel} of ${cover.solid}` : `panel ${panel}`;
}

/** "panel P1 (back and top)": the name and, in brackets, what it covers. */
export function panelWithLabel(cover: Cover, panel: string, work: Work): string {
  const label = cover.panels.find(({ id }) => id === panel)?.label ?? panel;
  const name = panelName(cover, panel, work);
  return label === panel || label === name ? name : `${name} (${label})`;
}

/** What a piece of cloth is called: its panel, or its own label. */
export function pieceName(piece: Piece, cover: Cover | null, work: Work): string {
  return piece.panel === null || cover === null ? piece.label : panelName(cover, piece.panel, work);
}

/** "seam A", or "seam A of pad" where several covers have one. */
export function seamName(cover: Cover, seam: string, { covers }: Work): string {
  return covers.length > 1 ? `seam ${seam} of ${cover.solid}` : `seam ${seam}`;
}

/** "block seat", or "block seat of chair" where several solids are made. */
export function blockName(solid: string, block: string, { solids }: Work): string {
  return solids.length > 1 ? `block ${block} of ${solid}` : `block ${block}`;
}

/** "the foam of the seat": one block, or several glued together. */
export function foamName(solid: string): string {
  return `foam of ${solid}`;
}

/** "cover of seat". */
export function coverName(solid: string): string {
  return `cover of ${solid}`;
}

/** "slab 1 of seat foam". */
export function stockName(plan: CutPlan, used: UsedStock, { stock }: Work["project"]): string {
  const label = stock.find(({ id }) => id === plan.stock)?.label ?? plan.stock;
  return `${plan.kind} ${numberOf(plan, used)} of ${label}`;
}

/** "slab 1 of seat foam", or "slabs 1, 2 and 3 of seat foam" where they are cut alike. */
export function stockNames(
  plan: CutPlan,
  alike: readonly UsedStock[],
  { stock }: Work["project"],
): string {
  const label = stock.find(({ id }) => id === plan.stock)?.label ?? plan.stock;
  const numbers = alike.map((used) => String(numberOf(plan, used)));
  const last = numbers.at(-1) ?? "";
  if (numbers.length < 2) return `${plan.kind} ${last} of ${label}`;
  return `${plan.kind}s ${numbers.slice(0, -1).join(", ")} and ${last} of ${label}`;
}

/** Which slab, sheet or board of a plan it is, from 1, as the figures count them. */
export function numberOf(plan: CutPlan, used: UsedStock): number {
  return plan.used.indexOf(used) + 1;
}

/** What a cut part is called: a block of a solid, or a loose piece by its label. */
export function partName(part: string, work: Work): string {
  for (const solid of work.solids) {
    const block = solid.blocks.find(({ id }) => part === `${solid.id}/${id}`);
    if (block !== undefined) return blockName(solid.id, block.id, work);
  }
  return partLabel(part, work.project);
}
