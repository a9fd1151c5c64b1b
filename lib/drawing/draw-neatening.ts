import type { Mm, Point } from "../plane/types.ts";
import { drawPath } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import type { Figure, FigureLimits, Ink } from "./types.ts";

/** Enlarged: the swing of the stitch, its length along the edge, the edge and the room below it. */
const [swing, advance, long, deep]: readonly [Mm, Mm, Mm, Mm] = [6, 3, 54, 20];

/** The raw edge of a piece with the stitch that holds it: zigzag from just over the edge inwards. */
export function drawNeatening(limits: FigureLimits): Figure {
  const over: Mm = 1;
  const swings = Math.floor(long / advance);
  const stitches = Array.from({ length: swings + 1 }, (_, i): Point => [
    i * advance,
    i % 2 === 0 ? -over : swing - over,
  ]);
  const inks: Ink[] = [
    drawPath("line stock", [
      [0, deep],
      [0, 0],
      [long, 0],
      [long, deep],
    ]),
    { ...drawPath("line seam heavy", stitches), isObstacle: true },
  ];
  const labels = [
    { words: "raw edge", at: [long, 0] as Point },
    { words: "stitches just over the edge", at: [long / 2, -over] as Point },
    { words: "wrong side", at: [long / 2, deep - 5] as Point },
  ];
  const placed = placeLabels(
    labels.map(({ words, at }) => ({
      lines: [words],
      style: "label" as const,
      candidates:
        words === "wrong side" ? [{ at, anchor: "middle", leader: null }] : roundPlaces(at),
    })),
    inks,
  );
  return finishFigure(
    {
      id: "method/neaten",
      title: "How a raw edge is neatened",
      alt: "The raw edge of a piece, enlarged. The stitches swing from just over the edge into the cloth and back, all along it.",
      scale: "Not to scale",
    },
    { inks: [...inks, ...placed.inks], collisions: placed.collisions },
    limits,
  );
}
