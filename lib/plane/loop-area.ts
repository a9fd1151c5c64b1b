import type { Loop, Mm2, Shape } from "./types.ts";
import { arcRadius, arcSweep } from "./segments.ts";
import { polygonArea } from "./polygon-area.ts";

/**
 * Signed area inside a loop of lines and arcs: positive counter-clockwise. Exact for arcs: the
 * polygon of the corners plus r²(θ − sin θ)/2 for each arc.
 * @source Weisstein, "Circular Segment", MathWorld
 */
export function loopArea(loop: Loop): Mm2 {
  const corners = polygonArea(loop.map((segment) => segment.from));
  return loop.reduce((area, segment) => {
    if (segment.kind === "line") return area;
    const sweep = arcSweep(segment);
    return area + (arcRadius(segment) ** 2 * (sweep - Math.sin(sweep))) / 2;
  }, corners);
}

/** Area of a shape less its holes. Never negative. */
export const shapeArea = (shape: Shape): Mm2 =>
  shape.holes.reduce(
    (area, hole) => area - Math.abs(loopArea(hole)),
    Math.abs(loopArea(shape.outer)),
  );
