import type { Point, Polygon, Ratio } from "../plane/types.ts";
import type { Cover, Piece, Seam } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import { boxOfPoints } from "./boxes.ts";
import { ringInk } from "./dot-ink.ts";
import { pieceName } from "./draw-panel.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { flowPictures } from "./flow-pictures.ts";
import { insidePoints } from "./inside-point.ts";
import { markLine } from "./mark-line.ts";
import { markSegments, markShape } from "./mark-outline.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { pieceLetters } from "./piece-letters.ts";
import { foldLines } from "./piece-lines.ts";
import { placeLabels } from "./place-labels.ts";
import { shortName } from "./short-name.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture, ToPaper } from "./types.ts";

/** A turn of more than 12 degrees is a pivot; less is steered round. @source common practice, no source */
const PIVOT = Math.cos((12 * Math.PI) / 180);

/** The panels that the seams of a step join, those edges heavy, notches and pivots marked, the rest pale. */
export function drawSeam(
  input: DrawingInput,
  cover: Cover,
  { seams, limits }: { readonly seams: readonly Seam[]; readonly limits: FigureLimits },
): Figure {
  const ids = [...new Set(seams.flatMap(({ panels }) => panels))];
  const pieces = ids.flatMap(
    (id) => cover.pieces.find(({ panel, id: own }) => panel === id || own === id) ?? [],
  );
  const fitted = fitScale(
    (scale) => seamPicture(cover, pieces, { seams, scale, width: limits.width }),
    [0, 0],
    limits,
  );
  const letters = seams.map(({ id }) => id);
  const last = letters.at(-1) ?? "";
  return finishFigure(
    {
      id: `seam/${cover.solid}/${letters.join("+")}`,
      title:
        letters.length > 1
          ? `Seams ${letters.slice(0, -1).join(", ")} and ${last}`
          : `Seam ${last}`,
      alt: seams.map((seam) => describe(input, pieces, seam)).join(" "),
      scale: fitted.note,
      drawn: fitted.scale * Math.max(0, ...pieces.flatMap(({ cutSize }) => cutSize)),
    },
    fitted.picture,
    limits,
  );
}

function describe({ project }: DrawingInput, pieces: readonly Piece[], seam: Seam): string {
  const [a, b] = seam.length;
  const joined = pieces.filter(
    ({ id, panel }) => seam.panels.includes(id) || (panel !== null && seam.panels.includes(panel)),
  );
  const eased = Math.abs(a - b) > 0.5 ? ` Ease ${formatLength(Math.abs(a - b), project)} in.` : "";
  return `Seam ${seam.id}, ${formatLength(a, project)} long, joins ${joined.map(pieceName).join(" to ")}, drawn heavy.${eased} Rings mark where to pivot: ${seam.corners.length}.`;
}

function seamPicture(
  cover: Cover,
  pieces: readonly Piece[],
  how: { readonly seams: readonly Seam[]; readonly scale: Ratio; readonly width: number },
): Picture {
  const { seams, scale, width } = how;
  const ids = seams.map(({ id }) => id);
  // Where there is little room, or many to tell apart, the words of the step say what the panel is.
  const name = width > 110 && pieces.length < 3 ? pieceName : shortName;
  const pictures = pieces.map((piece) =>
    seamPiece(cover, piece, { ids, scale, name: name(piece) }),
  );
  return flowPictures(pictures, width, width > 110 ? 14 : 8);
}

function seamPiece(
  cover: Cover,
  piece: Piece,
  how: { readonly ids: readonly string[]; readonly scale: Ratio; readonly name: string },
): Picture {
  const { ids, scale, name } = how;
  const toPaper = flatView(scale);
  const panel = cover.panels.find(({ id }) => id === piece.panel) ?? null;
  const pale = [
    markShape(piece.outline, "ghost"),
    markShape(piece.finished, "ghost"),
    ...foldLines(piece, panel).map((mark) => paleMark(mark(toPaper))),
  ].flatMap((mark) => mark(toPaper));
  const edges = piece.edges.filter((edge) => edge.seam !== null && ids.includes(edge.seam));
  const heavy = edges.flatMap(({ segments }) => markSegments(segments, "seam heavy")(toPaper));
  const notches = piece.notches
    .filter((notch) => ids.includes(notch.seam))
    .flatMap(({ at, towards }) => {
      const allowance = edges[0]?.allowance ?? 10;
      const end: Point = [
        at[0] + Math.cos(towards) * allowance,
        at[1] + Math.sin(towards) * allowance,
      ];
      return markLine([at, end], "cut")(toPaper);
    });
  const clips = piece.clips.flatMap(({ from, to }) => markLine([from, to], "stock")(toPaper));
  const pivots = pivotPoints(
    edges.map(({ segments }) => segments),
    toPaper,
  ).map((at) => ringInk(at, 1.6, "line pivot"));
  const inks: Ink[] = [...pale.map(asObstacle), ...heavy, ...notches, ...clips, ...pivots];
  const rings = [piece.finished.outer].map((loop) => flattenPath(pathOfLoop(loop, toPaper), 0.1));
  const placed = placeLabels(
    [...pieceLetters({ ...piece, edges }, toPaper), nameLabel(name, rings)],
    inks,
  );
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}

const paleMark = (inks: readonly Ink[]) => (): readonly Ink[] =>
  inks.map((ink) => (ink.kind === "path" ? { ...ink, className: "line ghost fold" } : ink));

/** Pale lines still may not run through words. */
function asObstacle(ink: Ink): Ink {
  return ink.kind === "path" ? { ...ink, isObstacle: true } : ink;
}

/** Corners within one seam's run on a piece: stop there with the needle down and turn. */
function pivotPoints(
  runs: readonly Piece["edges"][number]["segments"][],
  toPaper: ToPaper,
): Point[] {
  const ends = runs.flat().flatMap((segment) => {
    const points = flattenPath(pathOfLoop([segment], toPaper, false), 0.02);
    const [first, second] = points;
    const [before, last] = points.slice(-2);
    if (!first || !second || !before || !last) return [];
    return [{ first, last, leaves: direction(first, second), arrives: direction(before, last) }];
  });
  return ends.flatMap((a) =>
    ends
      .filter((b) => Math.hypot(a.last[0] - b.first[0], a.last[1] - b.first[1]) < 0.05)
      .filter((b) => a.arrives[0] * b.leaves[0] + a.arrives[1] * b.leaves[1] < PIVOT)
      .map(() => a.last),
  );
}

function direction([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(bx - ax) / length, (by - ay) / length];
}

function nameLabel(name: string, rings: readonly Polygon[]): Label {
  const box = boxOfPoints(rings.flat());
  const inside = insidePoints(rings, 100).map(
    (at) => ({ at, anchor: "middle", leader: null }) as const,
  );
  const under = [9, 12, 16, 20].map(
    (gap) => ({ at: [box.left, box.bottom + gap], anchor: "start", leader: null }) as const,
  );
  return { lines: [name], style: "name", candidates: [...inside, ...under] };
}
