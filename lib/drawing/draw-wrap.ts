import { wrapBlank } from "../estimate/wrap-blank.ts";
import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Solid } from "../solids/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath, rectanglePoints } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flowPictures } from "./flow-pictures.ts";
import { stockHatch } from "./hatch-styles.ts";
import { drawArrow } from "./mark-arrow.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** White between the foam and the line of the batting, on the paper. */
const PAD: Mm = 1.6;

/** The foam on its batting blank, and wrapped, seen from the end. */
export function drawWrap(
  { project }: DrawingInput,
  { solid, limits }: { readonly solid: Solid; readonly limits: FigureLimits },
): Figure {
  const [width, depth, thickness] = solid.size;
  const blank = wrapBlank({ width, depth, thickness });
  const write = (length: Mm) => formatLength(length, project);
  const fitted = fitScale(
    (scale) =>
      flowPictures(
        [blankPicture(solid, { blank, scale, write }), wrappedPicture(solid, scale)],
        limits.width,
        7,
      ),
    blank,
    limits,
  );
  return finishFigure(
    {
      id: `wrap/${solid.id}`,
      title: "Batting: the blank, and wrapped, seen from the end",
      alt: `The foam lies in the middle of a batting blank of ${formatSizes(blank, project)}. Front and back of the blank are folded over the top, where their edges meet and are sewn; the ends are folded in.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function blankPicture(
  { size: [width, depth] }: Solid,
  how: {
    readonly blank: readonly [Mm, Mm];
    readonly scale: Ratio;
    readonly write: (length: Mm) => string;
  },
): Picture {
  const { blank, scale, write } = how;
  const [w, h] = [blank[0] * scale, blank[1] * scale];
  const foam = rectanglePoints(
    [(w - width * scale) / 2, (h - depth * scale) / 2],
    [width * scale, depth * scale],
  );
  const [middle, near, far]: [Mm, Mm, Mm] = [
    w / 2,
    (h + depth * scale) / 2,
    (h - depth * scale) / 2,
  ];
  const inks: Ink[] = [
    drawHatch([foam], stockHatch, [
      { left: middle - 9, right: middle + 9, top: h / 2 - 3, bottom: h / 2 + 3 },
    ]),
    drawPath("line ghost", foam, { isClosed: true }),
    drawPath("line cut", rectanglePoints([0, 0], [w, h]), { isClosed: true }),
    ...drawArrow([middle - 8, h - 1.5], [middle - 8, near - 3], "motion"),
    ...drawArrow([middle - 8, 1.5], [middle - 8, far + 3], "motion"),
    ...drawDimension({ from: [0, h], to: [w, h], offset: [0, 5], text: write(blank[0]) }),
    ...drawDimension({
      from: [0, h],
      to: [0, 0],
      offset: [-5, 0],
      text: write(blank[1]),
      isTurned: true,
    }),
  ];
  const hasRoom = Math.min(width * scale - 4, depth * scale) > 9;
  const onFoam = { at: [middle, h / 2] as Point, anchor: "middle" as const, leader: null };
  const placed = placeLabels(
    [
      {
        lines: ["foam"],
        style: "label",
        candidates: [...(hasRoom ? [onFoam] : []), ...roundPlaces([middle, h / 2])],
      },
    ],
    inks,
  );
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}

/** From the end: the batting round the foam, its edges meeting on the top. */
function wrappedPicture({ size: [, depth, thickness] }: Solid, scale: Ratio): Picture {
  const [d, t] = [depth * scale, thickness * scale];
  const foam = rectanglePoints([0, 0], [d, t]);
  const meet = d * 0.5;
  const wrap: Point[] = [
    [meet - 0.5, -PAD],
    [-PAD, -PAD],
    [-PAD, t + PAD],
    [d + PAD, t + PAD],
    [d + PAD, -PAD],
    [meet + 0.5, -PAD],
  ];
  const inks: Ink[] = [
    drawHatch([foam], stockHatch),
    drawPath("line ghost", foam, { isClosed: true }),
    drawPath("line cut", wrap),
    drawPath("line stock", [
      [meet - 1.4, -PAD - 1.4],
      [meet + 1.4, -PAD + 1.4],
    ]),
    drawPath("line stock", [
      [meet + 1.4, -PAD - 1.4],
      [meet - 1.4, -PAD + 1.4],
    ]),
  ];
  const placed = placeLabels(
    [
      {
        lines: ["edges meet:", "sew loosely"],
        style: "label",
        candidates: roundPlaces([meet, -PAD - 1]),
      },
      {
        lines: ["front"],
        style: "label",
        candidates: [-PAD - 3, -PAD - 5].map((x) => ({
          at: [x, t / 2],
          anchor: "end",
          leader: null,
        })),
      },
    ],
    inks,
  );
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}
