import type { Loop, Mm, Point, Radians, Segment } from "./types.ts";
import { line } from "./segments.ts";

/**
 * A stretch of a ring as an outline, counter-clockwise, its round edges below and above: the middle of the
 * longer one is the lowest point, at height 0. Needs two radii above 0 and less than a full turn.
 */
export function ringLoop(one: Mm, other: Mm, sweep: Radians): Loop {
  const [inner, outer] = [Math.min(one, other), Math.max(one, other)];
  const start: Radians = -Math.PI / 2 - sweep / 2;
  const widest = sweep < Math.PI ? outer * Math.sin(sweep / 2) : outer;
  const centre: Point = [widest, outer];
  const at = (radius: Mm, angle: Radians): Point => [
    centre[0] + radius * Math.cos(angle),
    centre[1] + radius * Math.sin(angle),
  ];
  // Arcs of at most half a circle.
  const parts = Math.max(1, Math.ceil(sweep / Math.PI - 1e-9));
  const angles = Array.from({ length: parts + 1 }, (_, i) => start + (sweep * i) / parts);
  const arcs = (radius: Mm, along: readonly Radians[], isClockwise: boolean): Segment[] =>
    along.slice(1).map((to, i) => ({
      kind: "arc",
      from: at(radius, along[i]!),
      to: at(radius, to),
      centre,
      isClockwise,
    }));
  return [
    ...arcs(outer, angles, false),
    line(at(outer, angles.at(-1)!), at(inner, angles.at(-1)!)),
    ...arcs(inner, angles.toReversed(), true),
    line(at(inner, start), at(outer, start)),
  ];
}
