import { formatLength, formatSizes } from "../units/index.ts";
import type { Degrees, Mm, Ratio } from "../plane/types.ts";
import type { Solid } from "../solids/types.ts";
import { breakLabel } from "./break-label.ts";
import { drawBody } from "./draw-body.ts";
import { drawBoxSizes } from "./draw-box-sizes.ts";
import { finishFigure } from "./finish-figure.ts";
import { firstClear } from "./first-clear.ts";
import { fitScale } from "./fit-scale.ts";
import type { Fitted } from "./fit-scale.ts";
import { insidePoints } from "./inside-point.ts";
import { makeScene } from "./mesh-scene.ts";
import type { Callout } from "./place-beside.ts";
import { pictureSize } from "./picture-size.ts";
import { sizeAndName } from "./size-and-name.ts";
import { BEHIND_VIEW, FRONT_VIEW, spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, Picture } from "./types.ts";
import { visibleFaces } from "./visible-faces.ts";

/** From the front with face names, from behind below with face names, or from the front without. */
export type SolidSide = "front" | "behind" | "bare";

const ids: Readonly<Record<SolidSide, (solid: string) => string>> = {
  front: (solid) => `solid/${solid}`,
  behind: (solid) => `solid/${solid}/behind`,
  bare: () => "finished",
};

/** The finished form with its sizes and the names of its faces, from the front or from behind below. */
export function drawSolid(
  { project }: DrawingInput,
  solid: Solid,
  { side, limits }: { readonly side: SolidSide; readonly limits: FigureLimits },
): Figure {
  const angles = side === "behind" ? BEHIND_VIEW : FRONT_VIEW;
  const write = (length: Mm) => formatLength(length, project);
  const draw = (isBroken: boolean): Fitted =>
    fitScale(
      (scale) => solidPicture(solid, angles, { scale, write, isNamed: side !== "bare", isBroken }),
      pictureSize([{ mesh: solid.mesh }], angles),
      limits,
    );
  // In a narrow room long names in one line would leave nothing for the form.
  const fitted = firstClear(
    limits,
    () => draw(false),
    () => draw(true),
  );
  const faces = solid.faces.map(({ label }) => label).join(", ");
  const from = side === "behind" ? "from behind and below" : "from the front and above";
  return finishFigure(
    {
      id: ids[side](solid.id),
      title: side === "behind" ? "The same from behind and below" : "The finished form",
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
  how: {
    readonly scale: Ratio;
    readonly write: (length: Mm) => string;
    readonly isNamed: boolean;
    readonly isBroken: boolean;
  },
): Picture {
  const { scale, write, isNamed, isBroken } = how;
  const scene = makeScene([{ mesh: solid.mesh }], spaceView(azimuth, elevation, scale));
  const body = drawBody(scene);
  const sizes = (height: Ratio) => drawBoxSizes(solid, scene.view, write, [0.5, 0.5, height]);
  const named = isNamed ? visibleFaces(scene) : [];
  const callouts: Callout[] = named.flatMap(({ face, region }) => {
    const label = solid.faces.find(({ id }) => id === face)?.label;
    const [at] = insidePoints(region, 1);
    if (!label || !at) return [];
    return [{ lines: isBroken ? breakLabel(label) : [label], style: "label", to: at }];
  });
  return sizeAndName(body, callouts, sizes);
}
