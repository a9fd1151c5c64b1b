import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { pipingOverlap, pipingRuns } from "../seams/piping-runs.ts";
import { formatLength } from "../units/index.ts";
import { listWords } from "../units/list-words.ts";
import { alongPath } from "./along-path.ts";
import { dotInk } from "./dot-ink.ts";
import { drawHatch } from "./draw-hatch.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { stockHatch } from "./hatch-styles.ts";
import { markSegments, markShape } from "./mark-outline.ts";
import { flowPictures } from "./flow-pictures.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { pieceLetters } from "./piece-letters.ts";
import { nameInside } from "./name-inside.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { shortName } from "./short-name.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** Between the pictures of two panels. */
const gap: Mm = 8;

/** Each panel that takes piping, its piped edges heavy, the allowance hatched; null without piping. */
export function drawPiped(input: DrawingInput, cover: Cover, limits: FigureLimits): Figure | null {
  const shown = pipingRuns(cover).flatMap((run) => {
    const piece = cover.pieces.find(({ panel }) => panel === run.panel);
    return piece === undefined ? [] : [{ piece, ids: new Set(run.seams) }];
  });
  if (shown.length === 0) return null;
  const ends = formatLength(pipingOverlap, input.project);
  const names = listWords([...new Set(shown.map(({ piece }) => shortName(piece)))]);
  const fitted = fitScale(
    (scale) =>
      flowPictures(
        shown.map(({ piece, ids }) => pipedPicture(piece, ids, { scale, ends })),
        limits.width,
        gap,
      ),
    [0, 1].map((axis) => Math.max(...shown.map(({ piece }) => piece.cutSize[axis]!))) as [Mm, Mm],
    limits,
  );
  return finishFigure(
    {
      id: `piped/${cover.solid}`,
      title: `Piping round ${names}, right side facing you`,
      alt: `${names} with the piping along ${shown.flatMap(({ ids }) => [...ids].map((id) => `seam ${id}`)).join(", ")}: the cord on the seam line, drawn heavy, the raw edges together over the hatched allowance. The ends stay free for ${ends} where they meet.`,
      scale: fitted.note,
      drawn: fitted.scale * Math.max(...shown.flatMap(({ piece }) => piece.cutSize)),
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
  const hasCorners = edges.some(({ segments }) => segments.every(({ kind }) => kind === "line"));
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
        lines: ["snip the piping", hasCorners ? "at corners" : "round the curve"],
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
