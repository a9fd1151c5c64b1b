import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import { alongPath } from "./along-path.ts";
import { dotInk } from "./dot-ink.ts";
import { drawHatch } from "./draw-hatch.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { stockHatch } from "./hatch-styles.ts";
import { markSegments, markShape } from "./mark-outline.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { pieceLetters } from "./piece-letters.ts";
import { nameInside } from "./name-inside.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { shortName } from "./short-name.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** Left free where the ends of a piping meet. @source common practice, no source */
export const pipingEnds: Mm = 50;

/** The panel that takes the piping, its piped edges heavy, the allowance hatched; null without piping. */
export function drawPiped(input: DrawingInput, cover: Cover, limits: FigureLimits): Figure | null {
  const piped = cover.seams.filter(({ isPiped }) => isPiped);
  const ids = new Set(piped.map(({ id }) => id));
  const count = ({ edges }: Piece) => edges.filter(({ seam }) => seam && ids.has(seam)).length;
  const [piece] = cover.pieces
    .filter(({ panel }) => panel !== null)
    .toSorted((one, other) => count(other) - count(one));
  if (piece === undefined || count(piece) === 0) return null;
  const ends = formatLength(pipingEnds, input.project);
  const fitted = fitScale(
    (scale) => pipedPicture(piece, ids, { scale, ends }),
    piece.cutSize,
    limits,
  );
  return finishFigure(
    {
      id: `piped/${cover.solid}`,
      title: `Piping round ${shortName(piece)}, right side facing you`,
      alt: `${shortName(piece)} with the piping along ${piped.map(({ id }) => `seam ${id}`).join(", ")}: the cord on the seam line, drawn heavy, the raw edges together over the hatched allowance. The ends stay free for ${ends} where they meet.`,
      scale: fitted.note,
      drawn: fitted.scale * Math.max(...piece.cutSize),
    },
    fitted.picture,
    limits,
  );
}

function pipedPicture(
  piece: Piece,
  ids: ReadonlySet<string>,
  { scale, ends }: { readonly scale: Ratio; readonly ends: string },
): Picture {
  const toPaper = flatView(scale);
  const rings = [piece.finished.outer, ...piece.finished.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, toPaper), 0.1),
  );
  const cut = flattenPath(pathOfLoop(piece.outline.outer, toPaper), 0.1);
  const edges = piece.edges.filter(({ seam }) => seam !== null && ids.has(seam));
  const pale = [
    ...markShape(piece.outline, "stock")(toPaper),
    ...markShape(piece.finished, "ghost")(toPaper),
  ];
  const heavy = edges.flatMap(({ segments }) => markSegments(segments, "heavy")(toPaper));
  const longest = edges.toSorted((one, other) => other.length - one.length)[0];
  const run = longest ? flattenPath(pathOfLoop(longest.segments, toPaper, false), 0.1) : [];
  const meet: Point = alongPath(run, 0.35)?.at ?? [0, 0];
  const lines: Ink[] = [
    drawHatch([cut, [...(rings[0] ?? [])].reverse()], stockHatch),
    ...pale,
    ...heavy,
    dotInk(meet, 1.1),
  ];
  const letters = placeLabels(pieceLetters({ ...piece, edges }, toPaper), lines);
  const inks = [...lines, ...letters.inks];
  const corner = rings[0]?.[0] ?? meet;
  const placed = placeLabels(
    [
      {
        lines: ["ends meet here:", `leave ${ends} free`],
        style: "label",
        candidates: roundPlaces(meet),
      },
      {
        lines: ["snip the piping", "at corners"],
        style: "label",
        candidates: (rings[0] ?? [corner]).flatMap((at) => roundPlaces(at)),
      },
    ],
    inks,
  );
  return {
    inks: [...inks, ...placed.inks, ...nameInside(piece, rings, [...inks, ...placed.inks])],
    collisions: [...letters.collisions, ...placed.collisions],
  };
}
