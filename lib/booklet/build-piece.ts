import type { Mm } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import type { Cover, Piece, PieceEdge } from "../seams/types.ts";
import type { Figure } from "../drawing/types.ts";
import { pieceAnchor } from "./anchors.ts";
import { describeWalk } from "./describe-walk.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { Format } from "./make-format.ts";
import { stockLabel, titleOf } from "./open-hyphens.ts";
import type { EdgeText, Fact, PiecePage, Table } from "./pages.ts";
import { figures as numbers, tableOrNull, words } from "./table.ts";
import type { Plan } from "./types.ts";

/** Room that leaves the walk and the edges on the same page where they can be. */
const pieceRooms: readonly FigureRoom[] = [
  { width: 165, height: 45 },
  { width: 165, height: 52 },
  { width: 165, height: 60 },
  { width: 165, height: 70 },
  { width: 165, height: 80 },
  { width: 165, height: 95 },
];

/** A piece drawn this long shows all its marks. @source our choice */
const legible: Mm = 60;
/** Share of the largest drawing below which less room is not worth it. @source our choice */
const worthSaving = 0.7;

/** The page of one panel or loose piece: figure, sizes, the walk round its cut line, its edges. */
export function buildPiece(
  piece: Piece,
  figures: FigureSource,
  context: { readonly plan: Plan; readonly cover: Cover | null; readonly format: Format },
): PiecePage {
  const { plan, cover, format } = context;
  const panel = cover?.panels.find(({ id }) => id === piece.panel) ?? null;
  const id = pieceAnchor(piece, cover);
  const name = cover === null ? piece.id : (piece.panel ?? piece.id);
  const edges = piece.edges.map((edge) => ({ edge, text: edgeText(edge, piece, cover, format) }));
  const figure = pieceFigure(piece, cover, figures);
  const walk = describeWalk(piece.outline.outer, id, format, edges);
  return {
    kind: "piece",
    id,
    title: panel === null ? titleOf(piece.label) : `Panel ${panel.id}: ${piece.label}`,
    letter: name,
    facts: [
      ...pieceFacts(piece, plan, format),
      ...(figure === null ? [] : [{ label: "Drawn", value: lowerFirst(figure.scale) }]),
    ],
    warnings: pieceWarnings(piece, panel, plan),
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
    { label: "Cut size", value: format.size(piece.cutSize) },
    { label: "Finished size", value: format.size([max[0] - min[0], max[1] - min[1]]) },
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

/** In the least room in which its labels keep clear, else in all the room there is. */
function pieceFigure(piece: Piece, cover: Cover | null, figures: FigureSource): Figure | null {
  const ids = [
    ...(cover === null ? [] : [`panel/${cover.solid}/${piece.id}`]),
    `panel/${piece.id}`,
  ];
  const id = ids.find((each) => figures.ids.includes(each));
  if (id === undefined) return null;
  const largest = figures.draw(id, pieceRooms.at(-1));
  const least = Math.min(legible, worthSaving * (largest.drawn ?? 0));
  return drawClear(figures, id, pieceRooms, ({ drawn = 0 }) => drawn >= least) ?? largest;
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
