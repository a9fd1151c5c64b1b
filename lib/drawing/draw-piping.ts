import { shrinkOf } from "../project/shrink-of.ts";
import { pipingStripWidth } from "../seams/piping-strip-width.ts";
import type { Mm, Point } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath, rectanglePoints } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { flowPictures } from "./flow-pictures.ts";
import { stockHatch } from "./hatch-styles.ts";
import { drawArrow } from "./mark-arrow.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import type { DrawingInput, Figure, FigureLimits, Picture } from "./types.ts";

/** Strips joined aslant, and the strip folded round its cord, cut through; null without piping. */
export function drawPiping(input: DrawingInput, cover: Cover, limits: FigureLimits): Figure | null {
  const { project } = input;
  const piping = project.solids.find(({ id }) => id === cover.solid)?.cover?.piping ?? null;
  if (piping === null) return null;
  const shrink = shrinkOf(cover.fabric, project);
  const width = formatLength(pipingStripWidth(piping.cord, cover.seamAllowance, shrink), project);
  const cord = formatLength(piping.cord, project);
  const allowance = formatLength(cover.seamAllowance, project);
  const pictures = [stripPicture(width), foldedPicture(cord, allowance)];
  return finishFigure(
    {
      id: `piping/${cover.solid}`,
      title: "Piping: strips joined aslant, then folded round the cord",
      alt: `Left or above: two strips ${width} wide joined by a seam aslant. Right or below, cut through: the strip folded round a cord of ${cord}, sewn close to the cord, with ${allowance} of allowance beyond the needle.`,
      scale: "Not to scale",
    },
    flowPictures(pictures, limits.width, 7),
    limits,
  );
}

/** Two strips end to end, seen from the wrong side. */
function stripPicture(width: string): Picture {
  const [long, high]: [Mm, Mm] = [44, 11];
  const middle = long / 2;
  const strip = rectanglePoints([0, 0], [long, high]);
  const base = [
    drawPath("line stock", strip, { isClosed: true }),
    drawPath("line seam heavy", [
      [middle - high / 2, high],
      [middle + high / 2, 0],
    ]),
    ...drawDimension({ from: [0, high], to: [0, 0], offset: [-5, 0], text: width }),
  ];
  const placed = placeLabels(
    [
      {
        lines: ["join, pressed open"],
        style: "label",
        candidates: roundPlaces([middle, high / 2]),
      },
    ],
    base,
  );
  return { inks: [...base, ...placed.inks], collisions: placed.collisions };
}

/** The folded strip cut through: round the cord, then two layers to the raw edges. */
function foldedPicture(cord: string, allowance: string): Picture {
  const [radius, flat]: [Mm, Mm] = [5, 24];
  const gap: Mm = 0.9;
  const neck: Mm = Math.sqrt((radius + 1) ** 2 - gap ** 2);
  // Round the cord the long way, from the upper layer to the lower.
  const open = Math.asin(gap / (radius + 1));
  const bow = Array.from({ length: 41 }, (_, i): Point => {
    const angle = open + ((2 * Math.PI - 2 * open) * i) / 40;
    return [(radius + 1) * Math.cos(angle), -(radius + 1) * Math.sin(angle)];
  });
  const needle = neck + 1.4;
  const circle = Array.from({ length: 36 }, (_, i): Point => [
    radius * Math.cos((i * Math.PI) / 18),
    radius * Math.sin((i * Math.PI) / 18),
  ]);
  const base = [
    drawHatch([circle], stockHatch),
    drawPath("line stock", circle, { isClosed: true }),
    drawPath("line cut", [[needle + flat, -gap], ...bow, [needle + flat, gap]]),
    drawPath("line seam heavy", [
      [needle, -4.5],
      [needle, 4.5],
    ]),
    ...drawDimension({
      from: [needle, 3.5],
      to: [needle + flat, 3.5],
      offset: [0, 5],
      text: allowance,
    }),
    ...drawArrow([needle, -11], [needle, -5], "motion"),
  ];
  const placed = placeLabels(
    [
      { lines: ["needle"], style: "label", candidates: roundPlaces([needle, -11], false) },
      { lines: [`cord ${cord}`], style: "label", candidates: roundPlaces([-1, 1]) },
      {
        lines: ["right side out"],
        style: "label",
        candidates: roundPlaces([needle + flat * 0.7, -gap]),
      },
    ],
    base,
  );
  return { inks: [...base, ...placed.inks], collisions: placed.collisions };
}
