import type { Mm } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { enlargePiece } from "../seams/enlarge-piece.ts";
import type { Cover, Piece, PieceEdge } from "../seams/types.ts";
import { describeMarks } from "./describe-marks.ts";
import { shrinkOf } from "./shrink-of.ts";
import type { Figure } from "../drawing/types.ts";
import { pieceAnchor } from "./anchors.ts";
import { describeWalk } from "./describe-walk.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { stockLabel, titleOf } from "./open-hyphens.ts";
import type { EdgeText, Fact, PiecePage, Table } from "./pages.ts";
import { figures as numbers, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** Heights for a figure, least first; the width is that of the narrower paper. */
const heights: readonly Mm[] = [45, 52, 60, 70, 80, 95, 110, 125, 140];
const roomOf = (height: Mm): FigureRoom => ({ width: 165, height });

/** A piece drawn this long shows all its marks. @source our choice */
const legible: Mm = 45;
/** Share of the largest drawing below which less room is not worth it. @source our choice */
const worthSaving = 0.7;

/** What a page has room for, on the shorter paper. @source our choice, with a little to spare */
const pageHeight: Mm = 226;
/** Heading, sizes and checks; a row of the walk; a line of warning: as `print.css` sets them. */
const [wordsHeight, rowHeight, warningHeight]: readonly [Mm, Mm, Mm] = [42, 5, 5];

export interface PieceContext {
  readonly plan: Plan;
  readonly format: Format;
}

/** A piece and the cover it belongs to, null for a loose one. */
export interface CoverPiece {
  readonly piece: Piece;
  readonly cover: Cover | null;
}

/**
 * The pages of some pieces in order. Two that follow one another share a page where half of it is
 * enough for each; any other has the page to itself, and is drawn as large as that allows.
 */
export function buildPieces(
  pieces: readonly CoverPiece[],
  figures: FigureSource,
  context: PieceContext,
): readonly PiecePage[] {
  const pages: PiecePage[] = [];
  for (let i = 0; i < pieces.length; i += 1) {
    const pair = pieces
      .slice(i, i + 2)
      .map((one) => buildPiece(one, figures, { ...context, share: "half" }));
    if (pair.length === 2 && pair.every((page) => page !== null)) {
      pages.push(...pair);
      i += 1;
    } else pages.push(buildPiece(pieces[i]!, figures, { ...context, share: "whole" })!);
  }
  return pages;
}

/**
 * The page of one panel or loose piece: figure, sizes, the walk round its cut line, its edges. Null
 * where half a page was asked for and is not enough.
 */
function buildPiece(
  { piece, cover }: CoverPiece,
  figures: FigureSource,
  context: PieceContext & { readonly share: "half" | "whole" },
): PiecePage | null {
  const { plan, format, share } = context;
  const panel = cover?.panels.find(({ id }) => id === piece.panel) ?? null;
  const id = pieceAnchor(piece, cover);
  const name = cover === null ? piece.id : (piece.panel ?? piece.id);
  // The cut line is enlarged by what the cloth will shrink: the legs are found on edges enlarged with it.
  const laid = enlargePiece(piece, shrinkOf(piece, plan.project));
  const edges = laid.edges.map((edge) => ({ edge, text: edgeText(edge, piece, cover, format) }));
  const walk = describeWalk(piece.outline.outer, id, format, edges);
  const warnings = pieceWarnings(piece, panel, plan);
  const rows = walk.legs.length > 0 ? walk.legs.length : edges.length;
  const marked = describeMarks(piece, format).length;
  const taken = wordsHeight + (rows + marked) * rowHeight + warnings.length * warningHeight;
  const room = pageHeight / (share === "half" ? 2 : 1) - taken;
  const figure = pieceFigure(piece, cover, { figures, room, share });
  if (share === "half" && (figure === null || figure.height > room)) return null;
  return {
    kind: "piece",
    id,
    title: panel === null ? titleOf(piece.label) : `Panel ${panel.id}: ${piece.label}`,
    letter: name,
    facts: [
      ...pieceFacts(piece, plan, format),
      ...(figure === null ? [] : [{ label: "Drawn", value: lowerFirst(figure.scale) }]),
    ],
    warnings,
    figure,
    walk,
    edges:
      walk.legs.length > 0
        ? null
        : edgeTable(
            edges.map(({ text }) => text),
            id,
          ),
  };
}

function pieceFacts(piece: Piece, { project }: Plan, format: Format): readonly Fact[] {
  const { min, max } = loopBounds(piece.finished.outer);
  return [
    {
      label: "Cut",
      value: `${piece.cut * project.copies} from ${stockLabel(project.stock, piece.stock)}`,
    },
    { label: "Cut size", value: format.sizes(piece.cutSize) },
    { label: "Finished size", value: format.sizes([max[0] - min[0], max[1] - min[1]]) },
    ...describeMarks(enlargePiece(piece, shrinkOf(piece, project)), format),
  ];
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function pieceWarnings(piece: Piece, panel: Panel | null, { project }: Plan): readonly string[] {
  const cloth = project.stock.find(({ id }) => id === piece.stock);
  const isPrinted = cloth?.kind === "fabric" && !cloth.isTwoFaced;
  const twin = piece.mirrorOf ?? panel?.mirrorOf ?? null;
  return [
    ...(piece.isUpright
      ? ["Lay it with the arrow along the print: this way up, right side facing you."]
      : []),
    ...(twin === null
      ? []
      : [
          isPrinted
            ? `It is the mirror image of ${twin}. Mark both on the right side: turned over, it would show the wrong side of the cloth.`
            : `It is the mirror image of ${twin}. The cloth has two good sides, so one outline turned over gives both.`,
        ]),
    ...(panel?.sameAs == null ? [] : [`It is the same as ${panel.sameAs}.`]),
    ...(piece.clips.length === 0
      ? []
      : [
          `Clip the inward ${piece.clips.length === 1 ? "corner" : "corners"} where marked, to a thread short of the seam line, only when a step says so.`,
        ]),
  ];
}

/**
 * For half a page the least drawing whose labels keep clear and whose marks all show, or null; for a
 * page of its own the largest that fits.
 */
function pieceFigure(
  piece: Piece,
  cover: Cover | null,
  context: { readonly figures: FigureSource; readonly room: Mm; readonly share: "half" | "whole" },
): Figure | null {
  const { figures, room, share } = context;
  const ids = [
    ...(cover === null ? [] : [`panel/${cover.solid}/${piece.id}`]),
    `panel/${piece.id}`,
  ];
  const id = ids.find((each) => figures.ids.includes(each));
  if (id === undefined) return null;
  const rooms = heights.filter((height, i) => i < 4 || height <= room).map(roomOf);
  if (share === "whole")
    return drawClear(figures, id, rooms.toReversed()) ?? figures.draw(id, rooms.at(-1));
  const all = figures.draw(id, roomOf(heights.at(-1)!));
  const least = Math.min(legible, worthSaving * (all.drawn ?? 0));
  return drawClear(figures, id, rooms, ({ drawn = 0 }) => drawn >= least);
}

const edgeTable = (edges: readonly EdgeText[], id: string): Table | null =>
  tableOrNull(`${id}-edges`, "Edges, in order anticlockwise", {
    columns: [words("Seam"), words("Joins"), numbers("Seam line"), numbers("Allowance")],
    rows: edges.map(({ seam, joins, length, allowance }) => [seam, joins, length, allowance]),
  });

const edgeText = (
  edge: PieceEdge,
  piece: Piece,
  cover: Cover | null,
  format: Format,
): EdgeText => ({
  seam: edge.seam ?? "–",
  joins: joinWords(edge, piece, cover),
  length: format.length(edge.length),
  allowance: format.length(edge.allowance),
});

function joinWords(edge: PieceEdge, piece: Piece, cover: Cover | null): string {
  const seam = cover?.seams.find(({ id }) => id === edge.seam);
  const other = seam?.panels.find((id) => id !== piece.panel) ?? seam?.panels[0];
  switch (edge.kind) {
    case "hem":
      return "hem";
    case "opening":
      return "left open";
    case "closing":
      return other === undefined ? "closing" : `closing, to ${other}`;
    case "seam":
      return other === undefined ? "seam" : `to ${other}`;
  }
}
