import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { PieceSpec } from "../project/types.ts";
import { formatSizes } from "../units/index.ts";
import { boxOfPoints, shiftInks } from "./boxes.ts";
import { drawPath } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { flowPictures } from "./flow-pictures.ts";
import { drawArrow } from "./mark-arrow.ts";
import { measureText } from "./measure-text.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { textLines } from "./text-lines.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** A piece and the way its grain runs: along its length, across it, or no way. */
interface FlatPart {
  readonly piece: PieceSpec;
  readonly grain: "along" | "across" | "none";
}

/** What is done to the parts of wood; or all pieces of whatever stuff, as the project lists them. */
export type PartsFigure = "parts/sand" | "parts/join" | "parts/finish" | "pieces/flat" | "finished";

const words: Readonly<Record<PartsFigure, { readonly title: string; readonly alt: string }>> = {
  "parts/sand": {
    title: "Sand along the arrows, then round every edge",
    alt: " Arrows show the way of the grain, to sand along; the heavy edges are to be rounded.",
  },
  "parts/join": { title: "The parts to join", alt: "" },
  "parts/finish": {
    title: "Spread the finish along the arrows",
    alt: " Arrows show the way of the grain, to spread the finish along.",
  },
  "pieces/flat": { title: "The pieces", alt: "" },
  finished: { title: "The pieces", alt: "" },
};

/** The parts of wood side by side: to sand along the grain and round the edges, or to join. */
export function drawParts(
  input: DrawingInput,
  { id, limits }: { readonly id: PartsFigure; readonly limits: FigureLimits },
): Figure | null {
  const isWood = id.startsWith("parts/");
  const parts = isWood ? woodParts(input) : allParts(input);
  if (parts.length === 0) return null;
  const [isSanded, hasArrows] = [id === "parts/sand", isWood && id !== "parts/join"];
  const widest = Math.max(...parts.map(({ piece }) => piece.size[0]));
  const fitted = fitScale(
    (scale) => partsPicture(input, parts, { scale, width: limits.width, isSanded, hasArrows }),
    [widest, 1],
    limits,
  );
  const names = parts.map(
    ({ piece }) => `${piece.cut} × ${piece.label} ${formatSizes(piece.size, input.project)}`,
  );
  return finishFigure(
    {
      id,
      title: words[id].title,
      alt: `The parts at one scale: ${names.join("; ")}.${words[id].alt}`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function woodParts({ project }: DrawingInput): FlatPart[] {
  return project.pieces.flatMap((piece): FlatPart[] => {
    const stock = project.stock.find(({ id }) => id === piece.stock);
    if (stock?.kind === "sheet") return [{ piece, grain: stock.grain }];
    return stock?.kind === "board" ? [{ piece, grain: "along" }] : [];
  });
}

/** Pieces with a length and a width; what is cut off a roll by length shows nothing. */
const allParts = ({ project }: DrawingInput): FlatPart[] =>
  project.pieces
    .filter(({ outline, size: [length, width] }) => outline.outer.length > 2 && length * width > 0)
    .map((piece) => ({ piece, grain: "none" }));

/** Is there anything to lay side by side? */
export const hasFlatParts = (input: DrawingInput): boolean => allParts(input).length > 0;

interface PartsLook {
  readonly scale: Ratio;
  /** Edges heavy, to be rounded. */
  readonly isSanded: boolean;
  /** The way of the grain. */
  readonly hasArrows: boolean;
}

function partsPicture(
  input: DrawingInput,
  parts: readonly FlatPart[],
  how: PartsLook & { readonly width: Mm },
): Picture {
  const pictures = parts.map((part): Picture => ({
    inks: partInks(input, part, how),
    collisions: [],
  }));
  return flowPictures(pictures, how.width, 4);
}

function partInks(
  { project }: DrawingInput,
  { piece, grain }: FlatPart,
  { scale, isSanded, hasArrows }: PartsLook,
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
    hasArrows && grain !== "none" && half > 4
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
