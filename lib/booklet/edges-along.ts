import { distance } from "../plane/points.ts";
import { pointAlong } from "../plane/segments.ts";
import type { Loop, Mm, Point } from "../plane/types.ts";
import type { PieceEdge } from "../seams/types.ts";
import type { EdgeText } from "./pages.ts";
import type { Walk, WalkLeg } from "./walk-outline.ts";

/** An edge of a piece and what its table row says. */
export interface WalkedEdge {
  readonly edge: PieceEdge;
  readonly text: EdgeText;
}

/** For each leg of a walk the edges that lie along it, an allowance away. Every edge has one leg. */
export function edgesAlong(
  walk: Walk,
  edges: readonly WalkedEdge[],
): readonly (readonly EdgeText[])[] {
  const starts = [walk.start, ...walk.legs.map(({ to }) => to)];
  const found = edges.map(({ edge }) => {
    const middle = middleOf(edge.segments);
    const misses = walk.legs.map((leg, i) =>
      Math.abs(distanceToLeg(middle, starts[i]!, leg) - edge.allowance),
    );
    return misses.indexOf(Math.min(...misses));
  });
  return walk.legs.map((_, i) => edges.flatMap(({ text }, j) => (found[j] === i ? [text] : [])));
}

/** A point of the edge well away from its ends. */
function middleOf(segments: Loop): Point {
  const segment = segments[Math.floor(segments.length / 2)];
  return segment === undefined ? [0, 0] : pointAlong(segment, 0.5);
}

function distanceToLeg(point: Point, from: Point, leg: WalkLeg): Mm {
  if (leg.kind === "curved") return Math.abs(distance(point, leg.centre) - leg.radius);
  const [x, y] = [leg.to[0] - from[0], leg.to[1] - from[1]];
  const square = x * x + y * y;
  const along = square === 0 ? 0 : ((point[0] - from[0]) * x + (point[1] - from[1]) * y) / square;
  const share = Math.min(1, Math.max(0, along));
  return distance(point, [from[0] + share * x, from[1] + share * y]);
}
