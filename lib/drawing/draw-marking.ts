import type { Piece } from "../seams/types.ts";
import type { Mm, Point, Ratio } from "../plane/types.ts";
import { formatLength } from "../units/index.ts";
import { drawUpArrow } from "./draw-up-arrow.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { alongPath } from "./along-path.ts";
import { markLine } from "./mark-line.ts";
import { markShape } from "./mark-outline.ts";
import { nameInside } from "./name-inside.ts";
import { notchNumbers } from "./notch-numbers.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { pieceLetters } from "./piece-letters.ts";
import { seamLines } from "./piece-lines.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { shortName } from "./short-name.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture } from "./types.ts";

/** One piece with all that marking puts on it: seam lines, letters, notches, clips, the way up. */
export function drawMarking(input: DrawingInput, piece: Piece, limits: FigureLimits): Figure {
  const fitted = fitScale((scale) => markingPicture(input, piece, scale), piece.cutSize, limits);
  const { notches, clips } = piece;
  return finishFigure(
    {
      id: `mark/${piece.id}`,
      title: `How a piece is marked: ${shortName(piece)}, its right side facing you`,
      alt: `${shortName(piece)} with its seam line broken, the letter of each seam beside its edge${notches.length > 0 ? `, ${notches.length} notches with their numbers` : ""}${clips.length > 0 ? `, ${clips.length} clip lines that stay uncut for now` : ""}, and an arrow to the top. The cut line is pale.`,
      scale: fitted.note,
      drawn: fitted.scale * Math.max(...piece.cutSize),
    },
    fitted.picture,
    limits,
  );
}

function markingPicture({ project }: DrawingInput, piece: Piece, scale: Ratio): Picture {
  const toPaper = flatView(scale);
  const allowance = (seam: string): Mm =>
    piece.edges.find((edge) => edge.seam === seam)?.allowance ?? 0;
  const ticks = piece.notches.map(({ at, towards, seam }): [Point, Point] => {
    const reach = allowance(seam);
    return [at, [at[0] + Math.cos(towards) * reach, at[1] + Math.sin(towards) * reach]];
  });
  const lines: Ink[] = [
    ...markShape(piece.outline, "ghost")(toPaper),
    ...seamLines(piece).flatMap((mark) => mark(toPaper)),
    ...ticks.flatMap((tick) => markLine(tick, "cut")(toPaper)),
    ...piece.clips.flatMap(({ from, to }) => markLine([from, to], "cut")(toPaper)),
  ].map((ink) => (ink.kind === "path" ? { ...ink, isObstacle: true } : ink));
  const rings = [piece.finished.outer, ...piece.finished.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, toPaper), 0.1),
  );
  const letters = placeLabels(
    [...pieceLetters(piece, toPaper), ...notchNumbers(piece, toPaper)],
    lines,
  );
  let inks: Ink[] = [...lines, ...letters.inks];
  inks = [...inks, ...drawUpArrow(rings, inks)];
  inks = [...inks, ...nameInside(piece, rings, inks)];
  const words: Label[] = [];
  const ring = rings[0] ?? [];
  const seam = [0.05, 0.18, 0.31, 0.44, 0.57, 0.7, 0.83, 0.95].flatMap((share) => {
    const place = alongPath(ring, share);
    return place ? roundPlaces(place.at) : [];
  });
  words.push({ lines: ["seam line"], style: "label", candidates: seam });
  const half = piece.notches[0] ? allowance(piece.notches[0].seam) / 2 : 0;
  const middle = ([a, b]: [Point, Point]): Point => toPaper([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
  if (ticks.length > 0)
    words.push({
      lines: ["notch, snipped at", `most ${formatLength(half, project)}`],
      style: "label",
      candidates: ticks.flatMap((tick) => roundPlaces(middle(tick))),
    });
  if (piece.clips.length > 0)
    words.push({
      lines: ["clip line,", "not cut yet"],
      style: "label",
      candidates: piece.clips.flatMap(({ from, to }) => roundPlaces(middle([from, to]))),
    });
  const placed = placeLabels(words, inks);
  return {
    inks: [...inks, ...placed.inks],
    collisions: [...letters.collisions, ...placed.collisions],
  };
}
