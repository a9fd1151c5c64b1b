import type { Panel } from "../panels/types.ts";
import type { Bounds, Point } from "../plane/types.ts";
import { scale } from "../plane/points.ts";
import { enlargePiece } from "../seams/enlarge-piece.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { listWords } from "../units/list-words.ts";
import { hasAllowance } from "./piece-strokes.ts";
import { drawMapSheet } from "./draw-map-sheet.ts";
import { drawSharedSheets } from "./draw-shared-sheets.ts";
import { drawTileSheet } from "./draw-tile-sheet.ts";
import { shrinkOf } from "../project/shrink-of.ts";
import { mergeTwin } from "./merge-twin.ts";
import { papers } from "./paper.ts";
import type { Paper, PaperName } from "./paper.ts";
import {
  flip,
  halfOf,
  patternBounds,
  placePattern,
  quarterTurn,
  whyNoHalf,
} from "./place-pattern.ts";
import type { Half, LaidPiece } from "./place-pattern.ts";
import { tilePiece } from "./tile-piece.ts";
import type { TileGrid } from "./tile-piece.ts";
import type { Plan } from "./types.ts";

/** Full-size pattern sheets for one paper. */
export interface Patterns {
  readonly paper: Paper;
  readonly sheets: readonly PatternSheet[];
  /** Where halves were asked for: a sentence for each reason why pieces are drawn whole. */
  readonly wholes: readonly string[];
  /** The same, and which pieces are quicker drawn straight on the cloth: stands on the map. */
  readonly notes: readonly string[];
}

export interface PatternSheet {
  readonly id: string;
  readonly title: string;
  /** One drawing of the whole sheet in true millimetres. */
  readonly svg: string;
  readonly words: readonly string[];
}

/** A piece as it lies under its sheets. */
export interface PatternPiece {
  readonly laid: LaidPiece;
  readonly name: string;
  /** What is drawn of it; all of it but for a half. */
  readonly bounds: Bounds;
  /** The line to lay on a fold of the cloth; null for a whole piece. */
  readonly fold: Half["fold"] | null;
  readonly grid: TileGrid;
}

/** Other ways to draw the sheets. */
export interface PatternOptions {
  /** Half of each piece whose halves mirror one another, to lay on a fold of the cloth. */
  readonly halves: boolean;
  /** Seen from the other side, to draw on the wrong side of the cloth. */
  readonly isMirrored: boolean;
}

export const plainPatterns: PatternOptions = { halves: false, isMirrored: false };

/** How many maps of pieces go on one sheet. @source our choice: three by three, each about 60 mm */
const mapsOnSheet = 9;

/**
 * Sheets for every piece that a pattern saves work on: one with a curve or a slanted edge. Pieces with
 * square corners are quicker by the walk round their outline, and are only named. Pieces that fit whole
 * share sheets; larger ones are cut up into tiles, turned by a quarter where that saves sheets.
 */
export function patternSheets(
  plan: Plan,
  paperName: PaperName,
  options: PatternOptions = plainPatterns,
): Patterns {
  const paper = papers[paperName];
  const title = plan.project.title;
  const onCloth = onClothOf(plan);
  const all = [
    ...plan.covers.flatMap((cover) =>
      cover.pieces.map((piece) => onCloth({ piece, ...nameAndFolds(piece, cover) })),
    ),
    ...plan.pieces.map((piece) => onCloth({ piece, name: piece.label, folds: [], sameAs: null })),
  ];
  const wanted = sharePatterns(all.filter(({ piece }) => needsPattern(piece)));
  const laid = wanted.map((each) => layPattern(each, paper, options));
  const walked = all.filter(({ piece }) => !needsPattern(piece)).map(({ name }) => name);
  const wholes = options.halves ? tellWholes(laid) : [];
  const notes = [...wholes, ...(walked.length === 0 ? [] : [tellWalked(walked)])];
  const mapCount = Math.max(1, Math.ceil(laid.length / mapsOnSheet));
  const maps = Array.from({ length: mapCount }, (_, i) => {
    const pieces = laid.slice(i * mapsOnSheet, (i + 1) * mapsOnSheet);
    return drawMapSheet(pieces, { paper, title, number: i + 1, notes });
  });
  const whole = laid.filter(isWhole);
  const tiles = laid
    .filter((each) => !isWhole(each))
    .flatMap((each) => each.grid.tiles.map((tile) => drawTileSheet(each, tile, { paper, title })));
  return {
    paper,
    sheets: [...maps, ...drawSharedSheets(whole, { paper, title }), ...tiles],
    wholes,
    notes,
  };
}

const capital = (sentence: string): string => sentence.charAt(0).toUpperCase() + sentence.slice(1);

const tellWalked = (names: readonly string[]): string =>
  `Drawn by the walk in the booklet instead: ${names.join("; ")}.`;

/** Which pieces have no half, and why. */
function tellWholes(pieces: readonly PatternPiece[]): readonly string[] {
  const reasons = [
    ["outline", "its outline has no middle to fold on", "their outlines have no middle to fold on"],
    [
      "marks",
      "its notches or marks do not mirror one another",
      "their notches or marks do not mirror one another",
    ],
  ] as const;
  return reasons.flatMap(([reason, one, several]) => {
    const names = pieces.flatMap(({ laid, name }) =>
      whyNoHalf(laid) === reason ? [name.replace(/[:,].*$/, "")] : [],
    );
    if (names.length === 0) return [];
    const are = names.length === 1 ? `is drawn whole: ${one}` : `are drawn whole: ${several}`;
    return [capital(`${listWords(names)} ${are}.`)];
  });
}

/** Everything that is drawn of a piece, as large as it has to be before the cloth shrinks. */
const onClothOf =
  ({ project }: Plan) =>
  (named: NamedPiece): NamedPiece => {
    const shrink = shrinkOf(named.piece.stock, project);
    const by = 1 / (1 - shrink);
    const folds = named.folds.map((fold) => fold.map((point) => scale(point, by)));
    const piece = enlargePiece(named.piece, shrink);
    // Where nothing is allowed for seams the cut line is the only line.
    const finished = hasAllowance(piece) ? piece.finished : piece.outline;
    return { ...named, piece: { ...piece, finished }, folds };
  };

/** Whether a piece fits on one sheet. */
const isWhole = ({ grid: { rows, columns } }: PatternPiece): boolean => rows * columns === 1;

/** Turn a piece the way that takes the fewest sheets; upright where both take as many. */
function layPattern(
  { piece, name, folds }: NamedPiece,
  paper: Paper,
  { halves, isMirrored }: PatternOptions,
): PatternPiece {
  const drawn: LaidPiece = { piece, folds, up: [0, 1] };
  const seen = isMirrored ? placePattern(drawn, flip) : drawn;
  const ways = [seen, placePattern(seen, quarterTurn)].map((laid): PatternPiece => {
    const half = halves ? halfOf(laid) : null;
    const bounds = half?.bounds ?? patternBounds(laid);
    const words = [name, ...(half ? ["half of it"] : []), ...(isMirrored ? ["mirrored"] : [])];
    const grid = tilePiece(laid, paper, bounds);
    return { laid, name: words.join(", "), bounds, fold: half?.fold ?? null, grid };
  });
  const [upright, turned] = ways as [PatternPiece, PatternPiece];
  return turned.grid.tiles.length < upright.grid.tiles.length ? turned : upright;
}

interface NamedPiece {
  readonly piece: Piece;
  readonly name: string;
  readonly folds: readonly (readonly Point[])[];
  readonly sameAs: string | null;
}

/** A piece that is the same as another, or its mirror image, is cut from the other's pattern. */
function sharePatterns(pieces: readonly NamedPiece[]): readonly NamedPiece[] {
  const firsts = pieces.map((each, i) => pieces.slice(0, i).find((other) => areTwins(each, other)));
  return pieces.flatMap((each, i) => {
    if (firsts[i] !== undefined) return [];
    const twins = pieces.filter((_, j) => firsts[j] === each);
    const notes = twins.map(
      ({ piece, sameAs }) => `${sameAs === null ? "turned over" : "also"} for ${piece.id}`,
    );
    const piece = twins.reduce(
      (merged, twin) => mergeTwin(merged, twin.piece, twin.sameAs === null),
      each.piece,
    );
    return [{ ...each, piece, name: [each.name, ...notes].join(", ") }];
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
