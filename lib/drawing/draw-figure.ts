import { drawGlue } from "./draw-glue.ts";
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
  return drawers;
}
