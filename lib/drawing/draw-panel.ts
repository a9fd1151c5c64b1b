import type { Panel } from "../panels/types.ts";
import type { Mm, Point, Polygon, Ratio } from "../plane/types.ts";
import type { Piece } from "../seams/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { boxOfPoints } from "./boxes.ts";
import { checkDiagonal, drawDiagonal } from "./check-diagonal.ts";
import { drawUpArrow } from "./draw-up-arrow.ts";
import { finishFigure } from "./finish-figure.ts";
import { firstClear } from "./first-clear.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { insidePoints, isInsideRings } from "./inside-point.ts";
import { measureText } from "./measure-text.ts";
import { notchNumbers } from "./notch-numbers.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { pieceLetters } from "./piece-letters.ts";
import { markLabels, pieceLines } from "./piece-lines.ts";
import { pieceSizes } from "./piece-sizes.ts";
import { placeLabels } from "./place-labels.ts";
import type { Candidate, DrawingInput, Figure, FigureLimits, Label, Picture } from "./types.ts";

/** One piece as it is marked on the cloth: lines, letters, sizes, which way up and how many. */
export function drawPanel(
  input: DrawingInput,
  piece: Piece,
  how: { readonly id?: string; readonly panel: Panel | null; readonly limits: FigureLimits },
): Figure {
  const { id = `panel/${piece.id}`, panel, limits } = how;
  const draw = (hasDiagonal: boolean) =>
    fitScale(
      (scale) => piecePicture(input, piece, { panel, scale, hasDiagonal }),
      piece.cutSize,
      limits,
    );
  // The words below measure the same diagonal.
  const fitted = firstClear(
    limits,
    () => draw(true),
    () => draw(false),
  );
  return finishFigure(
    {
      id,
      title: pieceName(piece),
      alt: describePiece(input, piece, panel),
      scale: fitted.note,
      drawn: fitted.scale * Math.max(...piece.cutSize),
    },
    fitted.picture,
    limits,
  );
}

function piecePicture(
  { project }: DrawingInput,
  piece: Piece,
  how: { readonly panel: Panel | null; readonly scale: Ratio; readonly hasDiagonal: boolean },
): Picture {
  const { panel, scale, hasDiagonal } = how;
  const toPaper = flatView(scale);
  const lines = pieceLines(piece, panel, toPaper);
  const rings = [piece.finished.outer, ...piece.finished.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, toPaper), 0.1),
  );
  const sizes = pieceSizes(piece, toPaper, project);
  const diagonal = hasDiagonal ? checkDiagonal(piece, project) : null;
  const measured = diagonal
    ? drawDiagonal(diagonal, toPaper, { style: project, others: lines })
    : [];
  let inks = [...lines, ...sizes, ...measured];
  // The letters come first: they can stand in fewest places. Then the arrow, then the words.
  const letters = placeLabels(
    [
      ...pieceLetters(piece, toPaper),
      ...markLabels(piece, toPaper),
      ...notchNumbers(piece, toPaper),
    ],
    inks,
  );
  inks = [...inks, ...letters.inks];
  const isUpright = panel !== null || piece.isUpright;
  if (isUpright) inks = [...inks, ...drawUpArrow(rings, inks)];
  const words = placeLabels(isUpright ? [topLabel(rings)] : [], inks);
  inks = [...inks, ...words.inks];
  // A piece too small for its name goes without: the title of the figure says the same.
  const name = placeLabels([nameLabel(piece, rings)], inks);
  return {
    inks: name.collisions.length === 0 ? [...inks, ...name.inks] : inks,
    collisions: [...letters.collisions, ...words.collisions],
  };
}

/** "This edge to the top", just under the highest edge or above it. */
function topLabel(rings: readonly Polygon[]): Label {
  const box = boxOfPoints(rings.flat());
  const highest = rings.flat().filter(([, y]) => y < box.top + 0.2);
  const middle = highest.reduce((sum, [x]) => sum + x / highest.length, 0);
  const drops: readonly Mm[] = [4.5, 6, 8, 11];
  const text = "this edge to the top";
  const half = measureText(text, "label") / 2;
  const fits = ([x, y]: Point) =>
    y < box.top + (box.bottom - box.top) * 0.4 &&
    [-half, 0, half].every((shift) => isInsideRings([x + shift, y], rings));
  const across = [0, -12, 12, -24, 24, -36, 36, -50, 50].map((shift) => middle + shift);
  const inside = drops
    .flatMap((drop) => across.map((x): Point => [x, box.top + drop]))
    .filter(fits);
  const outside = [-7, -10, -14, -19, -25].flatMap((drop) =>
    across.map((x): Point => [x, box.top + drop]),
  );
  const candidates = [...inside, ...outside].map((at): Candidate => ({
    at,
    anchor: "middle",
    leader: null,
  }));
  return { lines: [text], style: "label", candidates };
}

/** The name and what to cut, inside the piece. */
function nameLabel(piece: Piece, rings: readonly Polygon[]): Label {
  const lines = [pieceName(piece), ...pieceNotes(piece)];
  const half = Math.max(...lines.map((line) => measureText(line, "name"))) / 2;
  const fits = ([x, y]: Point) =>
    [-half, 0, half].every((shift) => isInsideRings([x + shift, y], rings));
  const candidates = insidePoints(rings, 200)
    .filter(fits)
    .map((at): Candidate => ({ at, anchor: "middle", leader: null }));
  return { lines, style: "name", candidates };
}

/** Panels go by their number and words, loose pieces by their words alone. */
export function pieceName({ id, label }: Piece): string {
  return /^[A-Z]+\d+$/.test(id) ? `${id} ${label}` : label;
}

/** How many to cut, which face to look at, and its twin. */
export function pieceNotes(piece: Piece): string[] {
  const notes = [`cut ${piece.cut}, right side facing you`];
  if (piece.mirrorOf) notes.push(`mirror image of ${piece.mirrorOf}`);
  return notes;
}

function describePiece({ project }: DrawingInput, piece: Piece, panel: Panel | null): string {
  const box = boxOfPoints(flattenPath(pathOfLoop(piece.finished.outer, ([x, y]) => [x, -y])));
  const finished = formatSizes([box.right - box.left, box.bottom - box.top], project);
  const seams = piece.edges.flatMap(({ seam, length }) =>
    seam ? [`seam ${seam} ${formatLength(length, project)}`] : [],
  );
  const diagonal = checkDiagonal(piece, project);
  return [
    `${piece.label}: finished ${finished}, cut ${formatSizes(piece.cutSize, project)}.`,
    `Cut ${piece.cut} with the right side facing you.`,
    piece.mirrorOf ? `It is the mirror image of ${piece.mirrorOf}.` : "",
    panel || piece.isUpright ? "The arrow points to the top." : "",
    seams.length > 0 ? `Round the edge: ${seams.join(", ")}.` : "",
    panel && panel.folds.length > 0 ? `Folds: ${panel.folds.length}.` : "",
    ...piece.marks
      .filter(({ kind }) => kind === "middle")
      .map(({ label }) => `A cross marks the place of the ${label}.`),
    ...endWords(piece),
    piece.clips.length > 0 ? `Clip marks: ${piece.clips.length}.` : "",
    diagonal ? `Check diagonal of the cut line ${formatLength(diagonal.length, project)}.` : "",
  ]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

/** How many small crosses mark ends of what is sewn on. */
function endWords({ marks }: Piece): string[] {
  const ends = marks.filter(({ kind }) => kind === "end").length;
  if (ends === 0) return [];
  return [ends === 1 ? "A small cross marks an end." : `Small crosses mark ${ends} ends.`];
}
