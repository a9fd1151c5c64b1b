import type { Panel } from "../panels/types.ts";
import type { Point } from "../plane/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { drawMapSheet } from "./draw-map-sheet.ts";
import { drawTileSheet } from "./draw-tile-sheet.ts";
import { papers } from "./paper.ts";
import type { Paper, PaperName } from "./paper.ts";
import { tilePiece } from "./tile-piece.ts";
import type { TileGrid } from "./tile-piece.ts";
import type { Plan } from "./types.ts";

/** Full-size pattern sheets for one paper. */
export interface Patterns {
  readonly paper: Paper;
  readonly sheets: readonly PatternSheet[];
  /** Pieces that are quicker drawn straight on the cloth. */
  readonly walked: readonly string[];
}

export interface PatternSheet {
  readonly id: string;
  readonly title: string;
  /** One drawing of the whole sheet in true millimetres. */
  readonly svg: string;
  readonly words: readonly string[];
}

/** A piece with its tiles and the fold lines drawn on it. */
export interface PatternPiece {
  readonly piece: Piece;
  readonly name: string;
  readonly folds: readonly (readonly Point[])[];
  readonly grid: TileGrid;
}

/** How many maps of pieces go on one sheet. @source our choice: three by three, each about 60 mm */
const mapsOnSheet = 9;

/**
 * Sheets for every piece that a pattern saves work on: one with a curve or a slanted edge. Pieces with
 * square corners are quicker by the walk round their outline, and are only named.
 */
export function patternSheets(plan: Plan, paperName: PaperName): Patterns {
  const paper = papers[paperName];
  const all = [
    ...plan.covers.flatMap((cover) =>
      cover.pieces.map((piece) => ({ piece, ...nameAndFolds(piece, cover) })),
    ),
    ...plan.pieces.map((piece) => ({ piece, name: piece.label, folds: [], sameAs: null })),
  ];
  const wanted = sharePatterns(all.filter(({ piece }) => needsPattern(piece)));
  const tiled = wanted.map((each): PatternPiece => ({
    ...each,
    grid: tilePiece(each.piece, each.folds, paper),
  }));
  const walked = all.filter(({ piece }) => !needsPattern(piece)).map(({ name }) => name);
  const mapCount = Math.max(1, Math.ceil(tiled.length / mapsOnSheet));
  const maps = Array.from({ length: mapCount }, (_, i) => {
    const pieces = tiled.slice(i * mapsOnSheet, (i + 1) * mapsOnSheet);
    return drawMapSheet(pieces, { paper, title: plan.project.title, number: i + 1 });
  });
  const tiles = tiled.flatMap((each) =>
    each.grid.tiles.map((tile) => drawTileSheet(each, tile, { paper, title: plan.project.title })),
  );
  return { paper, sheets: [...maps, ...tiles], walked };
}

type NamedPiece = Omit<PatternPiece, "grid"> & { readonly sameAs: string | null };

/** A piece that is the same as another, or its mirror image, is cut from the other's pattern. */
function sharePatterns(pieces: readonly NamedPiece[]): readonly NamedPiece[] {
  const firsts = pieces.map((each, i) => pieces.slice(0, i).find((other) => areTwins(each, other)));
  return pieces.flatMap((each, i) => {
    if (firsts[i] !== undefined) return [];
    const notes = pieces
      .filter((_, j) => firsts[j] === each)
      .map(({ piece, sameAs }) => `${sameAs === null ? "turned over" : "also"} for ${piece.id}`);
    return [{ ...each, name: [each.name, ...notes].join(", ") }];
  });
}

const areTwins = (a: NamedPiece, b: NamedPiece): boolean => isLike(a, b) || isLike(b, a);

const isLike = ({ piece, sameAs }: NamedPiece, { piece: other }: NamedPiece): boolean =>
  [sameAs, piece.mirrorOf].some((twin) => twin !== null && [other.id, other.panel].includes(twin));

/** Whether an outline has a curve or an edge that is neither level nor upright. */
export const needsPattern = ({ outline }: Piece): boolean =>
  [outline.outer, ...outline.holes]
    .flat()
    .some(
      (segment) =>
        segment.kind === "arc" ||
        (Math.abs(segment.from[0] - segment.to[0]) > 1e-6 &&
          Math.abs(segment.from[1] - segment.to[1]) > 1e-6),
    );

function nameAndFolds(piece: Piece, cover: Cover): Pick<NamedPiece, "name" | "folds" | "sameAs"> {
  const panel: Panel | undefined = cover.panels.find(({ id }) => id === piece.panel);
  return {
    name: panel === undefined ? piece.label : `Panel ${panel.id}: ${piece.label}`,
    sameAs: panel?.sameAs ?? null,
    folds: panel?.folds.map(({ from, to }) => [from, to]) ?? [],
  };
}
