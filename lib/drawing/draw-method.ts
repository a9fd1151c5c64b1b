import type { Mm, Point } from "../plane/types.ts";
import { formatLength } from "../units/index.ts";
import { dotInk, ringInk } from "./dot-ink.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath, rectanglePoints } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { flowPictures } from "./flow-pictures.ts";
import { stockHatch } from "./hatch-styles.ts";
import { drawArrow } from "./mark-arrow.ts";
import { pathOf } from "./paper-path.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** How every seam is sewn: pinned and stitched, seen from above; and clipped and turned at a corner. */
export function drawMethod(
  input: DrawingInput,
  id: "method/seam" | "method/clip",
  limits: FigureLimits,
): Figure {
  const allowance = allowanceWords(input);
  const seams = input.covers.flatMap((cover) => cover.seams);
  const hasCorners = seams.some(({ corners }) => corners.length > 0);
  const pictures = [
    ...(id === "method/seam" ? [seamPicture(allowance)] : []),
    ...(id === "method/clip" || hasCorners ? [cornerPicture()] : []),
  ];
  const corner =
    "At an inward corner the allowance is clipped to just short of the seam line; the needle stays down there, and the cloth turns round it.";
  return finishFigure(
    {
      id,
      title: id === "method/seam" ? "How a seam is sewn" : "Clip and turn at a corner",
      alt: [
        ...(id === "method/seam"
          ? [
              `Two panels lie right sides together, pinned across the seam line. The stitches run ${allowance} from the edge, from ${allowance} after one end to ${allowance} before the other.`,
            ]
          : []),
        ...(id === "method/clip" || hasCorners ? [corner] : []),
      ].join(" "),
      scale: "Not to scale",
    },
    flowPictures(pictures, limits.width, 8),
    limits,
  );
}

/** One figure where all covers have one allowance, as in the words of the step. */
function allowanceWords({ covers, project }: DrawingInput): string {
  const [only, ...others] = [...new Set(covers.map(({ seamAllowance }) => seamAllowance))];
  return only !== undefined && others.length === 0 ? formatLength(only, project) : "1 allowance";
}

/** Two layers seen from above, the lower one a little to the side so that it shows. */
function seamPicture(allowance: string): Picture {
  const [long, deep, in_]: [Mm, Mm, Mm] = [46, 24, 9];
  const [start, stop] = [in_, long - in_];
  const pins = [0, 1, 2].map((i) => start + 5 + ((stop - start - 10) * i) / 2);
  const base: Ink[] = [
    drawPath("line ghost", [
      [1.4 + long, 1.4],
      [1.4 + long, 1.4 + deep],
      [1.4, 1.4 + deep],
    ]),
    drawPath("line stock", rectanglePoints([0, 0], [long, deep]), { isClosed: true }),
    {
      kind: "path",
      className: "line seam heavy",
      paths: stitches(start, stop).map(([a, b]) =>
        pathOf([
          [a, in_],
          [b, in_],
        ]),
      ),
      isObstacle: true,
    },
    ...pins.flatMap((x): Ink[] => [
      drawPath("line stock", [
        [x, 4],
        [x, in_ + 5.5],
      ]),
      ringInk([x, 3.2], 0.9, "line pivot"),
    ]),
    dotInk([start, in_], 0.9),
    dotInk([stop, in_], 0.9),
    ...drawDimension({ from: [0, in_], to: [0, 0], offset: [-4, 0], text: allowance }),
    ...drawDimension({ from: [long, 0], to: [stop, 0], offset: [0, -4], text: allowance }),
  ];
  const placed = placeLabels(
    [
      {
        lines: ["right sides together"],
        style: "label",
        candidates: [19, 20, 18].map((y) => ({
          at: [long / 2, y],
          anchor: "middle",
          leader: null,
        })),
      },
      { lines: ["start"], style: "label", candidates: roundPlaces([start, in_]) },
      { lines: ["stop"], style: "label", candidates: roundPlaces([stop, in_]) },
      { lines: ["pins"], style: "label", candidates: roundPlaces([pins[1] ?? 0, 3.2]) },
    ],
    base,
  );
  return { inks: [...base, ...placed.inks], collisions: placed.collisions };
}

/** Dashes of one length from one place to another. */
function stitches(from: Mm, to: Mm): [Mm, Mm][] {
  const count = 12;
  const step = (to - from) / (count - 0.4);
  return Array.from({ length: count }, (_, i) => [from + step * i, from + step * (i + 0.6)]);
}

/** An inward corner of the upper panel: clipped, the needle down, the cloth about to turn. */
function cornerPicture(): Picture {
  const in_: Mm = 8;
  const cloth: Point[] = [
    [0, 0],
    [24, 0],
    [24, 16],
    [48, 16],
    [48, 34],
    [0, 34],
  ];
  const corner: Point = [24 - in_, 16 + in_];
  const base: Ink[] = [
    drawHatch([[[24 - in_, 0], [24, 0], [24, 16], [48, 16], [48, 16 + in_], corner]], stockHatch),
    drawPath("line stock", cloth, { isClosed: true }),
    drawPath("line seam heavy", [[24 - in_, 1], corner, [47, 16 + in_]]),
    drawPath("line cut", [
      [24, 16],
      [corner[0] + 1.3, corner[1] - 1.3],
    ]),
    ringInk(corner, 1.6, "line pivot"),
    ...drawArrow([39, 4], [28, 13], "motion"),
  ];
  const placed = placeLabels(
    [
      { lines: ["clip"], style: "label", candidates: roundPlaces([22.5, 17.5]) },
      {
        lines: ["needle down,", "turn the cloth"],
        style: "label",
        candidates: roundPlaces(corner),
      },
      {
        lines: ["meets the", "next edge"],
        style: "label",
        candidates: roundPlaces([39, 4], false),
      },
    ],
    base,
  );
  return { inks: [...base, ...placed.inks], collisions: placed.collisions };
}
