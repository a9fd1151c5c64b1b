import type { ComparedWay, Cover } from "../seams/types.ts";
import { flatPanels } from "./draw-map.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import type { Figure, FigureLimits } from "./types.ts";

/** Room for a thumbnail: two stand side by side on a page. */
const THUMBNAIL: FigureLimits = { width: 80, height: 64 };

/** A small picture of the panels of one way of cutting the cover. */
export function drawWay(cover: Cover, way: ComparedWay, limits: FigureLimits): Figure {
  const room = {
    width: Math.min(limits.width, THUMBNAIL.width),
    height: Math.min(limits.height, THUMBNAIL.height),
  };
  const fitted = fitScale((scale) => flatPanels(way.panels, scale, room.width), [0, 0], room);
  const names = way.panels.map(({ id, label }) => `${id} ${label}`);
  return finishFigure(
    {
      id: `ways/${cover.solid}/${way.id}`,
      title: way.isChosen ? `Way ${way.id}, the one chosen` : `Way ${way.id}`,
      alt: `${way.panels.length} panels: ${names.join("; ")}.`,
      scale: fitted.note,
    },
    fitted.picture,
    room,
  );
}
