import type { Point, Ratio } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import { drawBody } from "./draw-body.ts";
import { drawEdges } from "./draw-edges.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { hideLines } from "./hide-lines.ts";
import { makeScene } from "./mesh-scene.ts";
import { edgeLines } from "./open-view.ts";
import { pictureSize } from "./picture-size.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { FRONT_VIEW, spaceView } from "./space-view.ts";
import type { Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** The finished thing with its seams heavy: where to look for loose stitches. */
export function drawCare(
  cover: Cover,
  { solid, limits }: { readonly solid: Solid; readonly limits: FigureLimits },
): Figure {
  const fitted = fitScale(
    (scale) => carePicture(cover, solid, scale),
    pictureSize([{ mesh: solid.mesh }], FRONT_VIEW),
    limits,
  );
  return finishFigure(
    {
      id: `care/${cover.solid}`,
      title: "Look along every seam for loose stitches",
      alt: `The finished ${cover.solid} seen from the front and above. Its ${cover.seams.length} seams are drawn heavy where they show: look along each of them for loose stitches.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function carePicture(cover: Cover, solid: Solid, scale: Ratio): Picture {
  const scene = makeScene([{ mesh: solid.mesh }], spaceView(FRONT_VIEW[0], FRONT_VIEW[1], scale));
  const ids = new Set(cover.seams.flatMap(({ edges }) => edges));
  const edges = solid.edges.filter(({ id }) => ids.has(id));
  const inks: Ink[] = [
    { ...drawBody(scene), className: "line ghost" },
    drawEdges(edges, scene, "line seam heavy"),
  ];
  const seen = hideLines(edges.flatMap(edgeLines), scene).filter(({ isVisible }) => isVisible);
  const candidates = seen
    .map(({ from, to }): Point => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2])
    .toSorted((a, b) => b[0] - a[0])
    .slice(0, 12)
    .flatMap((at) => roundPlaces(at));
  const placed =
    candidates.length === 0
      ? { inks: [], collisions: [] }
      : placeLabels([{ lines: ["seam"], style: "label", candidates }], inks);
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}
