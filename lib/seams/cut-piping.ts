import { shapeArea } from "../plane/loop-area.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { scaleLoop } from "../plane/scale-loop.ts";
import { line, segmentLength } from "../plane/segments.ts";
import type { Count, Mm, Point, Polygon } from "../plane/types.ts";
import type { CoverSpec, FabricStock } from "../project/types.ts";
import { type PipingRun, pipingOverlap } from "./piping-runs.ts";
import { pipingStripWidth } from "./piping-strip-width.ts";
import type { Piece, PieceEdge } from "./types.ts";

/** Bias strips this tall on the cloth nest well and are still few. @source our choice */
const tallestBias: Mm = 700;

/**
 * The strips that cover the piping of one solid, as one piece to be cut several times; null where
 * nothing is piped. Strips are joined end to end, so each but the last gives up two allowances.
 */
export function cutPiping(
  solid: string,
  runs: readonly PipingRun[],
  cover: CoverSpec,
  cloth: FabricStock,
): Piece | null {
  if (cover.piping === null || runs.length === 0) return null;
  const wanted = runs.reduce((sum, { length }) => sum + length + pipingOverlap, 0);
  const width = pipingStripWidth(cover.piping.cord, cover.seamAllowance);
  // Strips are worked out as they are once the cloth has shrunk, and cut larger.
  const usable = (cloth.width - 2 * cloth.selvedge) * (1 - cloth.shrink);
  const isBias = cover.piping.cut === "bias";
  // A join is sewn on the straight grain, so on the bias it takes √2 as much of the strip.
  const join = 2 * cover.seamAllowance * (isBias ? Math.SQRT2 : 1);
  const tallest = tallestBias * (1 - cloth.shrink);
  const longest = isBias ? Math.min(tallest, usable - width * Math.SQRT2) * Math.SQRT2 : usable;
  const { count, length } = shareOut(wanted, longest, join);
  return makeStrip(
    `${solid}-piping`,
    isBias ? biasStrip(length, width) : straightStrip(length, width),
    count,
    cloth,
  );
}

/** Equal strips that join up to at least the length wanted. */
export function shareOut(
  wanted: Mm,
  longest: Mm,
  join: Mm,
): { readonly count: Count; readonly length: Mm } {
  const count = Math.max(1, Math.ceil((wanted - join) / (longest - join) - 1e-9));
  return { count, length: (wanted + (count - 1) * join) / count };
}

const straightStrip = (length: Mm, width: Mm): Polygon => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];

/** A strip at 45° to the selvedge with its ends cut straight across the cloth. */
function biasStrip(length: Mm, width: Mm): Polygon {
  const [rise, end] = [length / Math.SQRT2, width * Math.SQRT2];
  return [
    [0, 0],
    [end, 0],
    [end + rise, rise],
    [rise, rise],
  ];
}

function makeStrip(id: string, corners: Polygon, cut: Count, cloth: FabricStock): Piece {
  const outer = corners.map((corner, i): ReturnType<typeof line> =>
    line(corner, corners[(i + 1) % corners.length] as Point),
  );
  const finished = { outer, holes: [] };
  const outline = { outer: scaleLoop(outer, 1 / (1 - cloth.shrink)), holes: [] };
  const { max } = loopBounds(outline.outer);
  return {
    id,
    label: "piping strip",
    panel: null,
    stock: cloth.id,
    cut,
    finished,
    outline,
    area: shapeArea(outline),
    cutSize: [max[0], max[1]],
    edges: outer.map((segment): PieceEdge => ({
      seam: null,
      segments: [segment],
      length: segmentLength(segment),
      allowance: 0,
      kind: "hem",
    })),
    notches: [],
    clips: [],
    marks: [],
    mirrorOf: null,
    isUpright: false,
  };
}
