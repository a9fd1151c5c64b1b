import type { Mm, Point } from "../plane/types.ts";
import type { Piece } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import type { LengthStyle } from "../units/types.ts";
import { drawDimension } from "./draw-dimension.ts";
import { findCollisions } from "./find-collisions.ts";
import { isInsideRings } from "./inside-point.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import type { Ink, ToPaper } from "./types.ts";

/** The corners a check diagonal runs between, in real millimetres. */
export interface Diagonal {
  readonly from: Point;
  readonly to: Point;
  readonly length: Mm;
}

/**
 * The longest line between corners of the cut line that stays inside the piece: the line the words of
 * the walk check too. Null for round pieces.
 */
export function checkDiagonal({ outline }: Piece): Diagonal | null {
  const corners = outline.outer.map(({ from }) => from);
  if (corners.length < 4 || outline.outer.some(({ kind }) => kind === "arc")) return null;
  const still: ToPaper = (point) => point;
  const rings = [outline.outer, ...outline.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, still)),
  );
  let best: Diagonal | null = null;
  corners.forEach((from, i) => {
    corners.slice(i + 2).forEach((to) => {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const level = Math.min(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1]));
      if (level < 1 || (best && length <= best.length + 0.5)) return;
      const shares = [0.02, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.98];
      const isWithin = shares.every((t) =>
        isInsideRings([from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t], rings),
      );
      if (isWithin) best = { from, to, length };
    });
  });
  return best;
}

/** The diagonal with its length, the figure slid along to where it is clear of other lines. */
export function drawDiagonal(
  diagonal: Diagonal,
  toPaper: ToPaper,
  { style, others }: { readonly style: LengthStyle; readonly others: readonly Ink[] },
): Ink[] {
  const text = `check ${formatLength(diagonal.length, style)}`;
  const [from, to] = [toPaper(diagonal.from), toPaper(diagonal.to)];
  const at = (share: number) => drawDimension({ from, to, offset: [0, 0], text, share });
  const shares = [0.3, 0.7, 0.5, 0.2, 0.8, 0.4, 0.6];
  const clear = shares.find((share) => {
    const inks = at(share).filter((ink) => ink.kind === "text");
    return findCollisions([...others.filter((ink) => ink.kind === "path"), ...inks]).length === 0;
  });
  // No room for its figure, or a strip that it would only smudge: left to the words beside the figure.
  const [across, up] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  const fits = Math.hypot(across, up) > 34 && Math.min(across, up) > 9;
  return clear === undefined || !fits ? [] : at(clear);
}
