import type { Point, Polygon, Ratio } from "../plane/types.ts";
import type { Cover, Piece, Seam } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import { boxOfInks, boxOfPoints, shiftInks } from "./boxes.ts";
import { ringInk } from "./dot-ink.ts";
import { pieceName } from "./draw-panel.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { flowBoxes } from "./flow-boxes.ts";
import { insidePoints } from "./inside-point.ts";
import { markLine } from "./mark-line.ts";
import { markSegments, markShape } from "./mark-outline.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { edgePlaces } from "./piece-letters.ts";
import { foldLines } from "./piece-lines.ts";
import { placeLabels } from "./place-labels.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture, ToPaper } from "./types.ts";

/** The panels that one seam joins, its edges heavy, its notches and pivots marked, the rest pale. */
export function drawSeam(
  input: DrawingInput,
  cover: Cover,
  { seam, limits }: { readonly seam: Seam; readonly limits: FigureLimits },
): Figure {
  const ids = [...new Set(seam.panels)];
  const pieces = ids.flatMap(
    (id) => cover.pieces.find(({ panel, id: own }) => panel === id || own === id) ?? [],
  );
  const fitted = fitScale(
    (scale) => seamPicture(cover, pieces, { seam, scale, width: limits.width }),
    [0, 0],
    limits,
  );
  const [a, b] = seam.length;
  const length = formatLength(a, input.project);
  const eased =
    Math.abs(a - b) > 0.5 ? ` Ease ${formatLength(Math.abs(a - b), input.project)} in.` : "";
  return finishFigure(
    {
      id: `seam/${cover.solid}/${seam.id}`,
      title: `Seam ${seam.id}`,
      alt: `Seam ${seam.id}, ${length} long, joins ${pieces.map(pieceName).join(" to ")}, drawn heavy.${eased} Rings mark where to pivot: ${seam.corners.length}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function seamPicture(
  cover: Cover,
  pieces: readonly Piece[],
  { seam, scale, width }: { seam: Seam; scale: Ratio; width: number },
): Picture {
  const pictures = pieces.map((piece) => seamPiece(cover, piece, seam, scale));
  const shifts = flowBoxes(
    pictures.map(({ inks }) => boxOfInks(inks)),
    width - 3,
    14,
  );
  return {
    inks: pictures.flatMap(({ inks }, index) => shiftInks(inks, shifts[index] ?? [0, 0])),
    collisions: pictures.flatMap(({ collisions }) => collisions),
  };
}

function seamPiece(cover: Cover, piece: Piece, seam: Seam, scale: Ratio): Picture {
  const toPaper = flatView(scale);
  const panel = cover.panels.find(({ id }) => id === piece.panel) ?? null;
  const pale = [
    markShape(piece.outline, "ghost"),
    markShape(piece.finished, "ghost"),
    ...foldLines(piece, panel).map((mark) => paleMark(mark(toPaper))),
  ].flatMap((mark) => mark(toPaper));
  const edges = piece.edges.filter((edge) => edge.seam === seam.id);
  const heavy = edges.flatMap(({ segments }) => markSegments(segments, "seam heavy")(toPaper));
  const notches = piece.notches
    .filter((notch) => notch.seam === seam.id)
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
    [...letters(edges, rings, seam, toPaper), nameLabel(piece, rings)],
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
  const ends = runs.flatMap((segments) =>
    segments.map((segment) => ({ from: segment.from, to: segment.to })),
  );
  const pivots: Point[] = [];
  for (const a of ends) {
    for (const b of ends) {
      if (Math.hypot(a.to[0] - b.from[0], a.to[1] - b.from[1]) > 0.1) continue;
      const [ax, ay] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
      const [bx, by] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
      const turn = Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
      if (turn > 0.2) pivots.push(toPaper(a.to));
    }
  }
  return pivots;
}

function letters(
  edges: readonly Piece["edges"][number][],
  rings: readonly Polygon[],
  seam: Seam,
  toPaper: ToPaper,
): Label[] {
  return edges.map(({ segments }) => ({
    lines: [seam.id],
    style: "letter",
    candidates: edgePlaces(flattenPath(pathOfLoop(segments, toPaper, false), 0.1), rings),
  }));
}

function nameLabel(piece: Piece, rings: readonly Polygon[]): Label {
  const box = boxOfPoints(rings.flat());
  const inside = insidePoints(rings, 100).map(
    (at) => ({ at, anchor: "middle", leader: null }) as const,
  );
  const under = [9, 12, 16, 20].map(
    (gap) => ({ at: [box.left, box.bottom + gap], anchor: "start", leader: null }) as const,
  );
  return { lines: [pieceName(piece)], style: "name", candidates: [...inside, ...under] };
}
