import { loopBounds } from "../plane/loop-bounds.ts";
import { offsetLoop } from "../plane/offset-loop.ts";
import type { Loop, Mm, Point, Ratio } from "../plane/types.ts";
import { footWidth, hemStitch } from "../seams/hem-stitch.ts";
import type { Piece } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import { alongPath } from "./along-path.ts";
import { drawDimension } from "./draw-dimension.ts";
import { boxOfInks, boxOfPoints, growBox } from "./boxes.ts";
import { drawHatch } from "./draw-hatch.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { stockHatch } from "./hatch-styles.ts";
import { drawArrow } from "./mark-arrow.ts";
import { markSegments, markShape } from "./mark-outline.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { textBox } from "./text-box.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture, ToPaper } from "./types.ts";

/** A loose piece with its edges turned in along the fold and the line that holds them. */
export function drawHem(input: DrawingInput, piece: Piece, limits: FigureLimits): Figure {
  const fitted = fitScale((scale) => hemPicture(input, piece, scale), piece.cutSize, limits);
  const write = (length: Mm) => formatLength(length, input.project);
  const [width, height] = sizeOf(piece);
  return finishFigure(
    {
      id: `hem/${piece.id}`,
      title: `Turn in the edges of the ${piece.label}, wrong side facing you`,
      alt: `The ${piece.label} with ${turnsOf(piece).map(write).join(" or ")} turned in along its edges, hatched. Folded it measures ${write(width)} by ${write(height)}. A broken line inside shows where to sew.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function hemPicture({ project }: DrawingInput, piece: Piece, scale: Ratio): Picture {
  const toPaper = flatView(scale);
  const write = (length: Mm) => formatLength(length, project);
  const [cut, fold] = [piece.outline.outer, piece.finished.outer].map((loop) =>
    ring(loop, toPaper),
  );
  const [width, height] = sizeOf(piece);
  const stitches = allowances(piece).map((allowance) => -hemStitch(allowance));
  const hasRoom = Math.min(width, height) > 4 * Math.max(footWidth, ...stitches.map(Math.abs));
  const sewn = hasRoom ? offsetLoop(piece.finished.outer, stitches) : [];
  const lines: Ink[] = [
    ...markShape(piece.outline, "stock")(toPaper),
    ...markShape(piece.finished, "cut")(toPaper),
    ...(hasRoom ? markSegments(sewn, "seam")(toPaper) : []),
    ...turnArrows(piece, toPaper),
  ];
  const box = boxOfInks(lines);
  const bounds = boxOfPoints(fold ?? []);
  const sizes = [
    ...drawDimension({
      from: [bounds.left, box.bottom],
      to: [bounds.right, box.bottom],
      offset: [0, 6],
      text: `${write(width)} folded`,
    }),
    ...drawDimension({
      from: [box.left, bounds.bottom],
      to: [box.left, bounds.top],
      offset: [-6, 0],
      text: write(height),
      isTurned: true,
    }),
  ];
  const inks = [...lines, ...sizes];
  /** Beside the middle of an edge that is turned in by so much. */
  const onHem = (by: Mm) =>
    piece.finished.outer.flatMap((segment, i) => {
      if (allowances(piece)[i] !== by) return [];
      const run = flattenPath(pathOfLoop([segment], toPaper, false), 0.1);
      return shares.flatMap((share) => {
        const place = alongPath(run, share);
        return place ? roundPlaces(place.at) : [];
      });
    });
  const shares = [0.12, 0.3, 0.4, 0.62, 0.8, 0.9];
  const on = (points: readonly Point[]) =>
    shares.flatMap((share) => {
      const place = alongPath([...points, ...points.slice(0, 1)], share);
      return place ? roundPlaces(place.at) : [];
    });
  const labels = turnsOf(piece).map((by): Label => ({
    lines: [`turn in ${write(by)}`],
    style: "label",
    candidates: turnsOf(piece).length === 1 ? on(fold ?? []) : onHem(by),
  }));
  if (hasRoom)
    labels.push({ lines: ["sew here"], style: "label", candidates: on(ring(sewn, toPaper)) });
  const placed = placeLabels(labels, inks);
  const white = placed.inks.flatMap((ink) =>
    ink.kind === "text" ? [growBox(textBox(ink), 0.8)] : [],
  );
  const hatch = drawHatch([cut ?? [], [...(fold ?? [])].reverse()], stockHatch, white);
  return { inks: [hatch, ...inks, ...placed.inks], collisions: placed.collisions };
}

/** An arrow over the middle of each side, the way its edge is folded. */
function turnArrows({ finished, edges }: Piece, toPaper: ToPaper): Ink[] {
  if (edges.length > 8) return [];
  return finished.outer.flatMap((segment, i) => {
    if (edges[i]!.allowance === 0) return [];
    const run = flattenPath(pathOfLoop([segment], toPaper, false), 0.1);
    const place = alongPath(run, 0.5);
    if (!place || segment.kind !== "line") return [];
    // The outline runs counter-clockwise with y up: its inside is on the left, on the paper too.
    const { at, along } = place;
    const inward: Point = [along[1], -along[0]];
    const point = (by: Mm): Point => [at[0] + inward[0] * by, at[1] + inward[1] * by];
    return drawArrow(point(-4.5), point(4.5), "motion");
  });
}

/** What is turned in along each edge of the outline. */
const allowances = ({ finished, edges }: Piece): readonly Mm[] =>
  finished.outer.map((_, i) => edges[i]!.allowance);

/** Different hems of one piece, the deepest first. */
const turnsOf = (piece: Piece): readonly Mm[] =>
  [...new Set(allowances(piece))].filter((by) => by > 0).toSorted((a, b) => b - a);

function sizeOf({ finished }: Piece): [Mm, Mm] {
  const { min, max } = loopBounds(finished.outer);
  return [max[0] - min[0], max[1] - min[1]];
}

const ring = (loop: Loop, toPaper: ToPaper): Point[] => flattenPath(pathOfLoop(loop, toPaper), 0.1);
