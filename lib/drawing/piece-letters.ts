import type { Piece } from "../seams/types.ts";
import type { Mm, Point, Polygon } from "../plane/types.ts";
import { alongPath } from "./along-path.ts";
import { distanceToRings, isInsideRings } from "./inside-point.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import type { Candidate, Label, ToPaper } from "./types.ts";

const SHARES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9] as const;
const AWAY: readonly Mm[] = [4.4, 5.6, 7.5, 10];

/** The letter of each seam beside its edge, inside the piece first, then outside. */
export function pieceLetters(piece: Piece, toPaper: ToPaper): Label[] {
  const ring = flattenPath(pathOfLoop(piece.finished.outer, toPaper), 0.1);
  return piece.edges.flatMap(({ seam, segments }): Label[] => {
    if (seam === null) return [];
    const run = flattenPath(pathOfLoop(segments, toPaper, false), 0.1);
    return [{ lines: [seam], style: "letter", candidates: edgePlaces(run, [ring]) }];
  });
}

/** Places beside a run of points: near its middle and inside first, then along it, then outside. */
export function edgePlaces(run: readonly Point[], rings: readonly Polygon[]): Candidate[] {
  const inside: Candidate[] = [];
  const outside: Candidate[] = [];
  const doubtful: Candidate[] = [];
  for (const away of AWAY) {
    for (const share of SHARES) {
      const place = alongPath(run, share);
      if (!place) continue;
      for (const side of [1, -1]) {
        const { at, along } = place;
        const spot: Point = [at[0] - along[1] * away * side, at[1] + along[0] * away * side];
        const near: Point = [at[0] - along[1] * 0.5 * side, at[1] + along[0] * 0.5 * side];
        const candidate: Candidate = { at: spot, anchor: "middle", leader: null };
        // Nearer to another edge than to its own, a letter would be read as that edge's.
        if (distanceToRings(spot, rings) < away - 0.5) doubtful.push({ ...candidate, leader: at });
        else if (isInsideRings(near, rings)) inside.push(candidate);
        else outside.push({ ...candidate, leader: away > 6 ? at : null });
      }
    }
  }
  // A letter far outside could be read as another edge's: those have leaders and come last.
  const most = 2 * SHARES.length;
  return [...inside.slice(0, most), ...outside, ...inside.slice(most), ...doubtful];
}
