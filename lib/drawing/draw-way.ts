import type { ComparedWay, Cover } from "../seams/types.ts";
import { flatPanels } from "./draw-map.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import type { Figure, FigureLimits } from "./types.ts";

/** A small picture of the panels of one way of cutting the cover. */
export function drawWay(cover: Cover, way: ComparedWay, limits: FigureLimits): Figure {
  const fitted = fitScale((scale) => flatPanels(way.panels, scale, limits.width), [0, 0], limits);
  const names = way.panels.map(({ id, label }) => `${id} ${label}`);
  return finishFigure(
    {
      id: `ways/${cover.solid}/${way.id}`,
      title: way.isChosen ? `Way ${way.id}, the one chosen` : `Way ${way.id}`,
      alt: `${way.panels.length} panels: ${names.join("; ")}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}
