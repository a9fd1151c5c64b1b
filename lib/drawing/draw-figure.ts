import { clothPieces } from "./cloth-pieces.ts";
import { drawBoards } from "./draw-boards.ts";
import { drawCutPlan } from "./draw-cut-plan.ts";
import { drawGlue } from "./draw-glue.ts";
import { drawLay } from "./draw-lay.ts";
import { drawPanel } from "./draw-panel.ts";
import { drawSolid } from "./draw-solid.ts";
import type { DrawingInput, Figure, FigureLimits } from "./types.ts";

/**
 * Room for a figure on an A4 or Letter page.
 *
 * @source our choice: 210 − 2 × 20 mm of margin; two thirds of the height leave room for the words
 */
export const pageLimits: FigureLimits = { width: 170, height: 200 };

/** Draws the figure when its turn comes. */
type Drawer = (limits: FigureLimits) => Figure;

/** Draw one figure by its id; null where the plan has no such figure. */
export function drawFigure(
  input: DrawingInput,
  id: string,
  limits: FigureLimits = pageLimits,
): Figure | null {
  const drawer = figureDrawers(input).get(id);
  return drawer ? drawer(limits) : null;
}

/** Every figure that can be drawn, in the order of the booklet. */
export function listFigures(input: DrawingInput): string[] {
  return [...figureDrawers(input).keys()];
}

function figureDrawers(input: DrawingInput): Map<string, Drawer> {
  const drawers = new Map<string, Drawer>();
  for (const solid of input.solids) {
    drawers.set(`solid/${solid.id}`, (limits) => drawSolid(input, solid, { side: "front", limits }));
    drawers.set(`solid/${solid.id}/behind`, (limits) =>
      drawSolid(input, solid, { side: "behind", limits }),
    );
    if (solid.blocks.length > 1)
      drawers.set(`glue/${solid.id}`, (limits) => drawGlue(input, solid, limits));
  }
  for (const { piece, panel } of clothPieces(input))
    drawers.set(`panel/${piece.id}`, (limits) => drawPanel(input, piece, { panel, limits }));
  for (const lay of input.lays)
    drawers.set(`lay/${lay.stock}`, (limits) => drawLay(input, lay, limits));
  for (const plan of [...input.slabs, ...input.sheets])
    plan.used.forEach((_, index) => {
      drawers.set(`${plan.kind}/${plan.stock}/${index + 1}`, (limits) =>
        drawCutPlan(input, plan, { index, limits }),
      );
    });
  for (const plan of input.boards)
    if (plan.used.length > 0)
      drawers.set(`board/${plan.stock}`, (limits) => drawBoards(input, plan, limits));
  return drawers;
}
