import type { ComparedWay, Cover } from "../seams/types.ts";
import { flatPanels } from "./draw-map.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import type { Figure, FigureLimits } from "./types.ts";
import { wayWords } from "./way-words.ts";

/** A small picture of the panels of one way of cutting the cover. */
export function drawWay(cover: Cover, way: ComparedWay, limits: FigureLimits): Figure {
  const fitted = fitScale((scale) => flatPanels(way.panels, scale, limits.width), [0, 0], limits);
  const names = way.panels.map(({ id, label }) => `${id} ${label}`);
  return finishFigure(
    {
      id: `ways/${cover.solid}/${way.id}`,
      title: titleOf(way),
      alt: `${way.panels.length} panels: ${names.join("; ")}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function titleOf(way: ComparedWay): string {
  const words = wayWords(way);
  const title = words.charAt(0).toUpperCase() + words.slice(1);
  return way.isChosen ? `${title}, the one chosen` : title;
}
