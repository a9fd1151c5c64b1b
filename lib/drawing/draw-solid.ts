import { formatLength, formatSizes } from "../units/index.ts";
import type { Degrees, Ratio } from "../plane/types.ts";
import type { Solid } from "../solids/types.ts";
import { drawBody } from "./draw-body.ts";
import { drawBoxSizes } from "./draw-box-sizes.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { insidePoints } from "./inside-point.ts";
import { makeScene } from "./mesh-scene.ts";
import type { Callout } from "./place-beside.ts";
import { pictureSize } from "./picture-size.ts";
import { sizeAndName } from "./size-and-name.ts";
import { BEHIND_VIEW, FRONT_VIEW, spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, Picture } from "./types.ts";
import { visibleFaces } from "./visible-faces.ts";

/** The finished form with its sizes and the names of its faces, from the front or from behind below. */
export function drawSolid(
  { project }: DrawingInput,
  solid: Solid,
  { side, limits }: { readonly side: "front" | "behind"; readonly limits: FigureLimits },
): Figure {
  const angles = side === "front" ? FRONT_VIEW : BEHIND_VIEW;
  const write = (length: number) => formatLength(length, project);
  const fitted = fitScale(
    (scale) => solidPicture(solid, angles, scale, write),
    pictureSize([{ mesh: solid.mesh }], angles),
    limits,
  );
  const faces = solid.faces.map(({ label }) => label).join(", ");
  const from = side === "front" ? "from the front and above" : "from behind and below";
  return finishFigure(
    {
      id: side === "front" ? `solid/${solid.id}` : `solid/${solid.id}/behind`,
      title: side === "front" ? "The finished form" : "The same from behind and below",
      alt: `${solid.id} seen ${from}. It is ${formatSizes(solid.size, project)} overall (length, depth, height). Its faces: ${faces}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function solidPicture(
  solid: Solid,
  [azimuth, elevation]: readonly [Degrees, Degrees],
  scale: number,
  write: (length: number) => string,
): Picture {
  const scene = makeScene([{ mesh: solid.mesh }], spaceView(azimuth, elevation, scale));
  const body = drawBody(scene);
  const sizes = (height: Ratio) => drawBoxSizes(solid, scene.view, write, [0.5, 0.5, height]);
  const callouts: Callout[] = visibleFaces(scene).flatMap(({ face, region }) => {
    const label = solid.faces.find(({ id }) => id === face)?.label;
    const [at] = insidePoints(region, 1);
    return label && at ? [{ lines: [label], style: "label", to: at }] : [];
  });
  return sizeAndName(body, callouts, sizes);
}
