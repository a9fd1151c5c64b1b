import type { Mm } from "../plane/types.ts";
import type { Point3, Solid } from "../solids/types.ts";
import { cornersOf, seatBlocks, type Seat } from "./find-seat.ts";

/**
 * Depth of the seat where somebody sits: front to back over a seat of one block. Over several blocks,
 * as in a corner seat, the shorter way across each, and the deepest of them.
 */
export function seatDepth(seat: Seat, solid: Solid): Mm {
  const corners = cornersOf(seat.face);
  const carriers = solid.blocks.filter(({ id }) => seatBlocks(seat).includes(id));
  if (carriers.length < 2) return seat.max[1] - seat.min[1];
  const depths = carriers.map(({ min, size }) => {
    const middle = [min[0] + size[0] / 2, min[1] + size[1] / 2] as const;
    return Math.min(chord(corners, 0, middle), chord(corners, 1, middle));
  });
  return Math.max(...depths.filter((depth) => Number.isFinite(depth) && depth > 0), 0);
}

/** Length of the stretch of a straight line along one axis, through a point, that lies in the outline. */
function chord(corners: readonly Point3[], axis: 0 | 1, point: readonly [Mm, Mm]): Mm {
  const across = axis === 0 ? 1 : 0;
  const at = point[across];
  const cuts = corners
    .flatMap((one, index) => {
      const next = corners[(index + 1) % corners.length] ?? one;
      const [low, high] = [one[across], next[across]];
      if (low > at === high > at) return [];
      return [one[axis] + ((at - low) / (high - low)) * (next[axis] - one[axis])];
    })
    .toSorted((one, other) => one - other);
  const before = cuts.findLast((cut) => cut <= point[axis]);
  const after = cuts.find((cut) => cut >= point[axis]);
  return before === undefined || after === undefined ? Infinity : after - before;
}
