import type { Piece } from "../seams/types.ts";
import type { Count, Mm, Point, Polygon, Ratio } from "../plane/types.ts";
import { alongPath, pathLength } from "./along-path.ts";
import { distanceToRings, isInsideRings } from "./inside-point.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import type { Candidate, Label, ToPaper } from "./types.ts";

const AWAY: readonly Mm[] = [4.4, 5.6, 7.5, 10];

/** A second letter on one side of a seam is worth it only on a stretch this long. */
const WORTH_REPEATING: Mm = 22;

/** The letter of each seam beside its edges, inside the piece first, then outside. */
export function pieceLetters(piece: Piece, toPaper: ToPaper): Label[] {
  const rings = [piece.finished.outer, ...piece.finished.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, toPaper), 0.1),
  );
  const sides = sidesOf(piece);
  const runs = piece.edges.flatMap(({ seam, segments }, index) => {
    const run = flattenPath(pathOfLoop(segments, toPaper, false), 0.1);
    return seam === null ? [] : [{ seam, side: sides[index], run, length: pathLength(run) }];
  });
  const lettered = runs.filter(({ side, length }, index) => {
    const alike = runs.filter((other) => other.side === side);
    const longest = alike.reduce((best, other) => Math.max(best, other.length), 0);
    const isFirst = runs.findIndex((other) => other.side === side && other.length === longest);
    return length >= WORTH_REPEATING || isFirst === index;
  });
  return lettered.map(({ seam, run }) => ({
    lines: [seam],
    style: "letter",
    candidates: edgePlaces(run, rings),
  }));
}

/** Edges of one seam that follow one another are one side of it; a piece sewn to itself has two. */
function sidesOf({ edges }: Piece): Count[] {
  const sides = edges.map(() => 0);
  edges.forEach(({ seam }, index) => {
    const before = edges[index - 1];
    sides[index] = before?.seam === seam ? (sides[index - 1] ?? index) : index;
  });
  // Round the corner where the outline starts.
  const last = edges.length - 1;
  const isRound = edges.length > 1 && edges[0]?.seam === edges[last]?.seam;
  return sides.map((side) => (isRound && side === sides[last] ? 0 : side));
}

/** Places beside a run of points: near its middle and inside first, then along it, then outside. */
export function edgePlaces(
  run: readonly Point[],
  rings: readonly Polygon[],
  count: Count = 10,
): Candidate[] {
  const shares = sharesFromMiddle(count);
  const inside: Candidate[] = [];
  const outside: Candidate[] = [];
  const doubtful: Candidate[] = [];
  for (const away of AWAY) {
    for (const share of shares) {
      const place = alongPath(run, share);
      if (!place) continue;
      for (const side of [1, -1]) {
        const { at, along } = place;
        const spot: Point = [at[0] - along[1] * away * side, at[1] + along[0] * away * side];
        const near: Point = [at[0] - along[1] * 0.5 * side, at[1] + along[0] * 0.5 * side];
        const candidate: Candidate = { at: spot, anchor: "middle", leader: null };
        // Nearer to another edge than to its own, a letter would be read as that edge's.
        const further: Point = [2 * spot[0] - at[0], 2 * spot[1] - at[1]];
        const isTight =
          distanceToRings(spot, rings) < away - 0.5 || distanceToRings(further, rings) < away * 0.8;
        if (isTight) doubtful.push({ ...candidate, leader: at });
        else if (isInsideRings(near, rings)) inside.push(candidate);
        else outside.push({ ...candidate, leader: away > 6 ? at : null });
      }
    }
  }
  // A letter far outside could be read as another edge's: those have leaders and come last.
  const most = 2 * shares.length;
  return [
    ...inside.slice(0, most),
    ...outside,
    ...inside.slice(most),
    ...doubtful,
    ...roundAbout(run),
  ];
}

/** The last resort: anywhere round the middle of the edge, on a leader. */
function roundAbout(run: readonly Point[]): Candidate[] {
  const middle = alongPath(run, 0.5)?.at;
  if (!middle) return [];
  return [9, 13, 18, 24, 31, 40, 50, 62].flatMap((reach) =>
    Array.from({ length: 24 }, (_, index): Candidate => {
      const angle = ((index + 0.5) * Math.PI) / 12;
      const at: Point = [middle[0] + reach * Math.cos(angle), middle[1] + reach * Math.sin(angle)];
      return { at, anchor: "middle", leader: middle };
    }),
  );
}

/** Places along a run as shares of its length: the middle, then outwards by equal steps. */
function sharesFromMiddle(count: Count): Ratio[] {
  const shares: Ratio[] = [0.5];
  for (let step = 1; step * 2 < count; step += 1)
    shares.push(0.5 - step / count, 0.5 + step / count);
  return shares;
}
