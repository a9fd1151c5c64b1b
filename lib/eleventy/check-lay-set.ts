import type { LaySet } from "../packing/bench-types.ts";
import { makeForm } from "../packing/place-forms.ts";
import { dropStraight } from "../packing/split-convex.ts";
import type { Point } from "../plane/types.ts";

/** What keeps a benchmark set from being laid at all, in one line; null when nothing does. */
export function checkLaySet({ name, stripWidth, items }: LaySet): string | null {
  if (items.every(({ quantity }) => quantity === 0)) return `${name}: asks for no piece`;
  for (const [index, { points, rotations }] of items.entries()) {
    const piece = `${name}: piece ${index + 1}`;
    if (dropStraight(points).length < 3)
      return `${piece} has fewer than three corners that enclose anything`;
    if (rotations.length === 0) return `${piece} lists no rotations; give at least 0`;
    if (crossesItself(points)) return `${piece} has an outline that crosses itself`;
    // The files lay along x, so that what counts here is the height.
    const heights = rotations.map((turn) => makeForm(points, turn, false).height);
    const least = Math.min(...heights);
    if (least > stripWidth + 1e-6) {
      return `${piece} is ${least} across at its narrowest turn; the strip is only ${stripWidth} wide`;
    }
  }
  return null;
}

/** Whether two sides of an outline cross. Sides that only touch do not. */
function crossesItself(points: readonly Point[]): boolean {
  const side = (a: Point, b: Point, c: Point): number =>
    Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
  return points.some((a, i) => {
    const b = points[(i + 1) % points.length]!;
    return points.slice(i + 2).some((c, k) => {
      const d = points[(i + k + 3) % points.length]!;
      return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
    });
  });
}
