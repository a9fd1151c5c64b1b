import type { Mm } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { enlargePiece } from "../seams/enlarge-piece.ts";
import type { Cover, Piece, PieceEdge } from "../seams/types.ts";
import { describeMarks } from "./describe-marks.ts";
import { shrinkOf } from "../project/shrink-of.ts";
import { goodFigures, largestFigure, shareRoom } from "./share-room.ts";
import type { Pictureless } from "./share-room.ts";
import type { Figure } from "../drawing/types.ts";
import { pieceAnchor } from "./anchors.ts";
import { describeWalk } from "./describe-walk.ts";
import type { FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { stockLabel, titleOf } from "./open-hyphens.ts";
import type { PaperName } from "./paper.ts";
import type { EdgeText, Fact, PiecePage, Table } from "./pages.ts";
import { figures as numbers, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** What a page has room for: its height less margins of 33 mm, with a little to spare. @source our choice */
const roomOn: Partial<Record<PaperName, Mm>> = { a4: 262 };
/** The same on any other paper: Letter is the shorter, and smaller ones have smaller figures. */
const roomOnLetter: Mm = 244;
/** Heading, sizes and checks; a row of the walk; a line of warning: as `print.css` sets them. */
const [wordsHeight, rowHeight, warningHeight]: readonly [Mm, Mm, Mm] = [52, 4.8, 5];

export interface PieceContext {
  readonly plan: Plan;
  readonly format: Format;
  readonly paper: PaperName;
  /** Height of the page after the pieces, which the last of them leaves room for where it can. */
  readonly next: Mm;
}

/** A piece and the cover it belongs to, null for a loose one. */
export interface CoverPiece {
  readonly piece: Piece;
  readonly cover: Cover | null;
}

/** A page but for its figure. */
interface Unpictured extends Pictureless {
  readonly page: PiecePage;
}

/**
 * The pages of some pieces in order. Two that follow one another share a page where both can be drawn
 * well enough on it; any other has the page to itself, and is drawn as large as that allows.
 */
export function buildPieces(
  pieces: readonly CoverPiece[],
  figures: FigureSource,
  context: PieceContext,
): readonly PiecePage[] {
  const height = roomOn[context.paper] ?? roomOnLetter;
  const all = pieces.map((each) => describePiece(each, figures, context));
  const pages: PiecePage[] = [];
  for (let i = 0; i < all.length; i += 1) {
    const [first, second] = [all[i]!, all[i + 1]];
    const shared = second === undefined ? null : shareRoom([first, second], figures, height);
    if (shared === null) {
      const room = height - first.words;
      const shy = second === undefined ? goodFigures(first, figures, room - context.next) : [];
      pages.push(pictured(first, shy.at(-1) ?? largestFigure(first, figures, room)));
    } else {
      pages.push(pictured(first, shared[0]), pictured(second!, shared[1]));
      i += 1;
    }
  }
  return pages;
}

const pictured = ({ page }: Unpictured, figure: Figure | null): PiecePage =>
  figure === null
    ? page
    : {
        ...page,
        facts: [...page.facts, { label: "Drawn", value: lowerFirst(figure.scale) }],
        figure,
      };

/** The page of one panel or loose piece: sizes, the walk round its cut line, its edges. */
function describePiece(
  { piece, cover }: CoverPiece,
  figures: FigureSource,
  { plan, format }: PieceContext,
): Unpictured {
  const panel = cover?.panels.find(({ id }) => id === piece.panel) ?? null;
  const id = pieceAnchor(piece, cover);
  const name = cover === null ? piece.id : (piece.panel ?? piece.id);
  // The cut line is enlarged by what the cloth will shrink: the legs are found on edges enlarged with it.
  const laid = enlargePiece(piece, shrinkOf(piece.stock, plan.project));
  const edges = laid.edges.map((edge) => ({ edge, text: edgeText(edge, piece, cover, format) }));
  const walk = describeWalk(piece.outline.outer, id, format, edges);
  const warnings = pieceWarnings(piece, panel, plan);
  const rows = walk.legs.length > 0 ? walk.legs.length : edges.length;
  const marked = describeMarks(piece, format).length;
  const ids = [
    ...(cover === null ? [] : [`panel/${cover.solid}/${piece.id}`]),
    `panel/${piece.id}`,
  ];
  return {
    words: wordsHeight + (rows + marked) * rowHeight + warnings.length * warningHeight,
    id: ids.find((each) => figures.ids.includes(each)) ?? null,
    isPlain: piece.notches.length + piece.clips.length === 0,
    page: {
      kind: "piece",
      id,
      title: panel === null ? titleOf(piece.label) : `Panel ${panel.id}: ${piece.label}`,
      letter: name,
      facts: pieceFacts(piece, plan, format),
      warnings,
      figure: null,
      walk,
      edges:
        walk.legs.length > 0
          ? null
          : edgeTable(
              edges.map(({ text }) => text),
              id,
            ),
    },
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
    ...describeMarks(enlargePiece(piece, shrinkOf(piece.stock, project)), format),
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
