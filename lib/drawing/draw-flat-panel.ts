import type { Panel } from "../panels/types.ts";
import type { Point, Polygon, Ratio } from "../plane/types.ts";
import { boxOfPoints } from "./boxes.ts";
import { drawHatch, drawTint } from "./draw-hatch.ts";
import { flatView } from "./flat-view.ts";
import { panelHatch } from "./hatch-styles.ts";
import { markLine } from "./mark-line.ts";
import { markShape } from "./mark-outline.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import type { Box, Ink } from "./types.ts";

/** A panel laid flat at a scale, its lowest-left corner at the paper's origin. */
export interface FlatPanel {
  readonly region: readonly Polygon[];
  readonly box: Box;
  readonly lines: readonly Ink[];
}

export function layPanel(panel: Panel, scale: Ratio): FlatPanel {
  const still = panel.shape.outer.map(({ from }) => from);
  const box = boxOfPoints(flattenPath(pathOfLoop(panel.shape.outer, ([x, y]) => [x, y])));
  const origin: Point = still.length > 0 ? [box.left, box.top] : [0, 0];
  const toPaper = flatView(scale, [0, 0], origin);
  const region = [panel.shape.outer, ...panel.shape.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, toPaper), 0.05),
  );
  const folds = panel.folds.map(({ from, to }) => markLine([from, to], "fold"));
  const lines = [markShape(panel.shape, "stock"), ...folds].flatMap((mark) => mark(toPaper));
  return { region, box: boxOfPoints(region.flat()), lines };
}

/** The hatch and pale tint that stand for the n-th panel everywhere. */
export function fillPanel(
  region: readonly Polygon[],
  index: number,
  keepClear: readonly Box[],
): Ink[] {
  return [drawTint(region, index), drawHatch(region, panelHatch(index), keepClear)];
}
