import type { Loop, Mm, Ratio, Shape } from "../plane/types.ts";
import { regionArea, unite } from "../plane/clip-polygons.ts";
import { crossesItself } from "../plane/crosses-itself.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import { loopArea } from "../plane/loop-area.ts";
import { mergeCollinear } from "../plane/merge-collinear.ts";
import { offsetLoop } from "../plane/offset-loop.ts";
import { scaleLoop } from "../plane/scale-loop.ts";
import { line } from "../plane/segments.ts";

/** One loop of a seam line with the allowance of each of its segments. */
export interface AllowedLoop {
  readonly segments: Loop;
  readonly allowances: readonly Mm[];
}

/**
 * The cut line: each stretch of seam line moved out by its own allowance, corners mitred, then the
 * whole enlarged by what the cloth will shrink. The only place where an allowance is added.
 *
 * @param loops the outer loop first, then holes
 * @param shrink share of its length the cloth loses in the wash
 */
export function addAllowance(loops: readonly AllowedLoop[], shrink: Ratio): Shape {
  const [outer, ...holes] = loops.map(({ segments, allowances }) => grow(segments, allowances));
  const enlarge = (loop: Loop): Loop => (shrink === 0 ? loop : scaleLoop(loop, 1 / (1 - shrink)));
  return {
    outer: enlarge(outer!),
    holes: holes.filter((hole) => Math.abs(loopArea(hole)) > 1).map(enlarge),
  };
}

function grow(segments: Loop, allowances: readonly Mm[]): Loop {
  const moved = mergeCollinear(offsetLoop(segments, allowances));
  // A slot narrower than two allowances makes its cut lines cross.
  return crossesItself(moved) ? cleanCutLine(moved) : moved;
}

/** What scissors would leave: the outermost line of a crossed loop. */
function cleanCutLine(loop: Loop): Loop {
  const flat = flattenLoop(loop);
  const isHole = loopArea(loop) < 0;
  const rings = unite([isHole ? [...flat].reverse() : flat]);
  const [outer] = [...rings].sort((a, b) => Math.abs(regionArea([b])) - Math.abs(regionArea([a])));
  const corners = isHole ? [...outer!].reverse() : outer!;
  return mergeCollinear(
    corners.map((corner, i) => line(corner, corners[(i + 1) % corners.length]!)),
  );
}
