import { turnPoint } from "./turn-point.ts";
import type { Degrees, Point, Polygon } from "../plane/types.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import { dropStraight, splitConvex } from "./split-convex.ts";
import type { StripForm } from "./strip-types.ts";

/** The ways a piece may lie: one form for each turn and flip, those that look alike only once. */
export function placeForms(
  outline: Polygon,
  turns: readonly Degrees[],
  flips: readonly boolean[],
): readonly StripForm[] {
  const forms = flips.flatMap((isFlipped) =>
    turns.map((turn) => makeForm(outline, turn, isFlipped)),
  );
  return forms.filter((form, i) => !forms.slice(0, i).some((known) => looksLike(known, form)));
}

/** One way a piece may lie, its lowest-left bound at the origin. */
export function makeForm(outline: Polygon, turn: Degrees, isFlipped: boolean): StripForm {
  const turned = outline.map((point) => turnPoint(isFlipped ? [-point[0], point[1]] : point, turn));
  const { min, max } = pointBounds(turned);
  const moved = turned.map(([x, y]): Point => [x - min[0], y - min[1]]);
  const polygon = isFlipped ? moved.reverse() : moved;
  return {
    polygon,
    parts: splitConvex(polygon),
    width: max[0] - min[0],
    height: max[1] - min[1],
    turn,
    isFlipped,
    outline,
    origin: [-min[0], -min[1]],
  };
}

/** Same corners in the same round, wherever it starts. */
function looksLike(one: StripForm, two: StripForm): boolean {
  const a = dropStraight(one.polygon);
  const b = dropStraight(two.polygon);
  if (a.length !== b.length) return false;
  return b.some((_, start) =>
    a.every(([x, y], i) => {
      const [otherX, otherY] = b[(start + i) % b.length]!;
      return Math.abs(x - otherX) < alike && Math.abs(y - otherY) < alike;
    }),
  );
}

/** Corners nearer than this are the same corner. */
const alike = 1e-6;
