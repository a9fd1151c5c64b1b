import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { PieceSpec } from "../project/types.ts";
import { formatSizes } from "../units/index.ts";
import { boxOfInks, boxOfPoints, shiftInks } from "./boxes.ts";
import { drawPath } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { flowBoxes } from "./flow-boxes.ts";
import { drawArrow } from "./mark-arrow.ts";
import { measureText } from "./measure-text.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { textLines } from "./text-lines.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** A part of wood and the way its grain runs: along its length, across it, or no way. */
interface WoodPart {
  readonly piece: PieceSpec;
  readonly grain: "along" | "across" | "none";
}

/** The parts of wood side by side: to sand along the grain and round the edges, or to join. */
export function drawParts(
  input: DrawingInput,
  { id, limits }: { readonly id: "parts/sand" | "parts/join"; readonly limits: FigureLimits },
): Figure | null {
  const parts = woodParts(input);
  if (parts.length === 0) return null;
  const isSanded = id === "parts/sand";
  const widest = Math.max(...parts.map(({ piece }) => piece.size[0]));
  const fitted = fitScale(
    (scale) => partsPicture(input, parts, { scale, width: limits.width, isSanded }),
    [widest, 1],
    limits,
  );
  const names = parts.map(
    ({ piece }) => `${piece.cut} × ${piece.label} ${formatSizes(piece.size, input.project)}`,
  );
  return finishFigure(
    {
      id,
      title: isSanded ? "Sand along the arrows, then round every edge" : "The parts to join",
      alt: `The parts at one scale: ${names.join("; ")}.${isSanded ? " Arrows show the way of the grain, to sand along; the heavy edges are to be rounded." : ""}`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function woodParts({ project }: DrawingInput): WoodPart[] {
  return project.pieces.flatMap((piece): WoodPart[] => {
    const stock = project.stock.find(({ id }) => id === piece.stock);
    if (stock?.kind === "sheet") return [{ piece, grain: stock.grain }];
    return stock?.kind === "board" ? [{ piece, grain: "along" }] : [];
  });
}

function partsPicture(
  input: DrawingInput,
  parts: readonly WoodPart[],
  how: { readonly scale: Ratio; readonly width: Mm; readonly isSanded: boolean },
): Picture {
  const drawn = parts.map((part) => partInks(input, part, how));
  const shifts = flowBoxes(
    drawn.map((inks) => boxOfInks(inks)),
    how.width - 3,
    4,
  );
  return {
    inks: drawn.flatMap((inks, index) => shiftInks(inks, shifts[index] ?? [0, 0])),
    collisions: [],
  };
}

function partInks(
  { project }: DrawingInput,
  { piece, grain }: WoodPart,
  { scale, isSanded }: { readonly scale: Ratio; readonly isSanded: boolean },
): Ink[] {
  const toPaper = flatView(scale);
  const rings = [piece.outline.outer, ...piece.outline.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, toPaper), 0.1),
  );
  const box = boxOfPoints(rings.flat());
  const middle: Point = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  // Level arrows by the upper edge, clear of a hole in the middle.
  const isAcross = grain === "across";
  const long = isAcross ? box.bottom - box.top : box.right - box.left;
  const half = Math.min(8, long * 0.38);
  const y = box.top + (box.bottom - box.top) * (box.bottom - box.top > 12 ? 0.25 : 0.5);
  const ends: [Point, Point] = isAcross
    ? [
        [box.left + (middle[0] - box.left) / 2, middle[1] + half],
        [box.left + (middle[0] - box.left) / 2, middle[1] - half],
      ]
    : [
        [middle[0] - half, y],
        [middle[0] + half, y],
      ];
  const arrows =
    isSanded && grain !== "none" && half > 4
      ? [...drawArrow(ends[0], ends[1], "motion"), ...drawArrow(ends[1], ends[0], "motion")]
      : [];
  const lines = [`${piece.cut} × ${piece.label}`, formatSizes(piece.size, project)];
  const isWide = measureText(lines.join(", "), "label") < box.right - box.left;
  const words = textLines(isWide ? [lines.join(", ")] : lines, [box.left, 0], {
    style: "label",
    anchor: "start",
  });
  const drop = box.bottom + 4.2 + (words.length - 1) * 2.4;
  return [
    ...rings.map((ring) =>
      drawPath(isSanded ? "line heavy" : "line edge", ring, { isClosed: true }),
    ),
    ...arrows,
    ...shiftInks(words, [0, drop]),
  ];
}
