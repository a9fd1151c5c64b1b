import { clothPieces } from "./cloth-pieces.ts";
import { drawAssembly, standingParts } from "./draw-assembly.ts";
import { drawBlock } from "./draw-block.ts";
import { drawBoards } from "./draw-boards.ts";
import { drawCutPlan } from "./draw-cut-plan.ts";
import { drawGlue } from "./draw-glue.ts";
import { drawLay } from "./draw-lay.ts";
import { drawMap } from "./draw-map.ts";
import { drawOpening } from "./draw-opening.ts";
import { drawPanel } from "./draw-panel.ts";
import { drawParts, hasFlatParts } from "./draw-parts.ts";
import { drawSeam } from "./draw-seam.ts";
import { drawSolid } from "./draw-solid.ts";
import { drawTipping, hasBalance } from "./draw-tipping.ts";
import { drawWay } from "./draw-way.ts";
import { groupAlike } from "../packing/group-alike.ts";
import type { CutPlan } from "../packing/types.ts";
import type { Mm } from "../plane/types.ts";
import { addStepFigures } from "./step-figures.ts";
import type { Cover } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import type { DrawingInput, Drawer, Figure, FigureLimits } from "./types.ts";

/**
 * Room for a figure on an A4 or Letter page.
 *
 * @source our choice: 210 − 2 × 20 mm of margin; two thirds of the height leave room for the words
 */
export const pageLimits: FigureLimits = { width: 170, height: 200 };

/**
 * Heights that kinds of figure keep to, so that their words fit the same page.
 *
 * @source our choice: half a page for views, a third for a step
 */
const kindHeights: Readonly<Record<string, Mm>> = {
  finished: 105,
  solid: 105,
  blocks: 125,
  block: 100,
  glue: 125,
  opening: 90,
  tipping: 85,
  seam: 110,
  pieces: 120,
};

/** Draw one figure by its id; null where the plan has no such figure. */
export function drawFigure(
  input: DrawingInput,
  id: string,
  limits: FigureLimits = pageLimits,
): Figure | null {
  const drawer = figureDrawers(input).get(id);
  if (!drawer) return null;
  const most = kindHeights[id.split("/")[0] ?? ""] ?? limits.height;
  return drawer({ ...limits, height: Math.min(limits.height, most) });
}

/** Every figure that can be drawn, in the order of the booklet. */
export function listFigures(input: DrawingInput): string[] {
  return [...figureDrawers(input).keys()];
}

function figureDrawers(input: DrawingInput): Map<string, Drawer> {
  const drawers = new Map<string, Drawer>();
  const [main] = input.solids;
  if (main) drawers.set("finished", (limits) => drawSolid(input, main, { side: "bare", limits }));
  for (const solid of input.solids) addSolid(drawers, input, solid);
  if (!main && standingParts(input.project).length > 0)
    drawers.set("finished", (limits) => drawAssembly(input, { id: "finished", limits }));
  if (standingParts(input.project).length > 0)
    drawers.set("pieces/all", (limits) => drawAssembly(input, { id: "pieces/all", limits }));
  if (hasFlatParts(input)) addFlatPieces(drawers, input);
  for (const cover of input.covers) addCover(drawers, input, cover);
  for (const { piece, panel, cover } of clothPieces(input)) {
    const ids = [`panel/${piece.id}`];
    // Panels of several covers share their numbers: each then goes by its solid as well.
    if (cover && input.covers.length > 1) ids.push(`panel/${cover.solid}/${piece.id}`);
    for (const id of ids.filter((each) => !drawers.has(each)))
      drawers.set(id, (limits) => drawPanel(input, piece, { id, panel, limits }));
  }
  for (const lay of input.lays)
    drawers.set(`lay/${lay.stock}`, (limits) => drawLay(input, lay, limits));
  for (const plan of [...input.slabs, ...input.sheets]) addCutPlan(drawers, input, plan);
  for (const plan of input.boards) addBoards(drawers, input, plan);
  addStepFigures(drawers, input);
  return drawers;
}

/** The loose pieces side by side: all there is to show of work that has no form to be drawn. */
function addFlatPieces(drawers: Map<string, Drawer>, input: DrawingInput): void {
  const ids = drawers.has("finished")
    ? (["pieces/flat"] as const)
    : (["finished", "pieces/flat"] as const);
  for (const id of ids) {
    drawers.set(id, (limits) => drawParts(input, { id, limits })!);
  }
}

function addSolid(drawers: Map<string, Drawer>, input: DrawingInput, solid: Solid): void {
  drawers.set(`solid/${solid.id}`, (limits) => drawSolid(input, solid, { side: "front", limits }));
  drawers.set(`solid/${solid.id}/behind`, (limits) =>
    drawSolid(input, solid, { side: "behind", limits }),
  );
  if (hasBalance(solid))
    drawers.set(`tipping/${solid.id}`, (limits) => drawTipping(input, solid, limits));
  if (solid.blocks.length > 1)
    for (const id of [`blocks/${solid.id}`, `glue/${solid.id}`])
      drawers.set(id, (limits) => drawGlue(input, solid, { id, limits }));
  const spec = input.project.solids.find(({ id }) => id === solid.id);
  for (const block of spec?.blocks ?? []) {
    if (block.kind === "box") continue;
    const id = `block/${solid.id}/${block.id}`;
    drawers.set(id, (limits) => drawBlock(input, block, { id, limits }));
  }
}

function addCutPlan(drawers: Map<string, Drawer>, input: DrawingInput, plan: CutPlan): void {
  plan.used.forEach((_, index) => {
    drawers.set(`${plan.kind}/${plan.stock}/${index + 1}`, (limits) =>
      drawCutPlan(input, plan, { index, limits }),
    );
  });
}

function addBoards(drawers: Map<string, Drawer>, input: DrawingInput, plan: CutPlan): void {
  if (plan.used.length > 0)
    drawers.set(`board/${plan.stock}`, (limits) => drawBoards(input, plan, { limits }));
  for (const [first] of groupAlike(plan)) {
    const number = plan.used.indexOf(first) + 1;
    drawers.set(`board/${plan.stock}/${number}`, (limits) =>
      drawBoards(input, plan, { limits, number }),
    );
  }
}

function addCover(drawers: Map<string, Drawer>, input: DrawingInput, cover: Cover): void {
  const solid = input.solids.find(({ id }) => id === cover.solid);
  if (solid && cover.panels.length > 0)
    drawers.set(`map/${cover.solid}`, (limits) => drawMap(input, cover, { solid, limits }));
  for (const way of cover.ways)
    drawers.set(`ways/${cover.solid}/${way.id}`, (limits) => drawWay(cover, way, limits));
  for (const seam of cover.seams)
    drawers.set(`seam/${cover.solid}/${seam.id}`, (limits) =>
      drawSeam(input, cover, { seams: [seam], limits }),
    );
  if (solid && cover.opening)
    drawers.set(`opening/${cover.solid}`, (limits) => drawOpening(input, cover, { solid, limits }));
}
