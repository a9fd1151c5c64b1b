import type { Bounds, Loop, Point, Segment } from "./types.ts";
import { angleOf, subtract, wholeTurn } from "./points.ts";
import { arcRadius, arcSweep } from "./segments.ts";

/** The upright rectangle round points; infinite and empty for none. */
export function pointBounds(points: readonly Point[]): Bounds {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    low = Math.min(low, y);
    right = Math.max(right, x);
    high = Math.max(high, y);
  }
  return { min: [left, low], max: [right, high] };
}

/** The upright rectangle round a loop, true for arcs. */
export const loopBounds = (loop: Loop): Bounds => pointBounds(loop.flatMap(extremes));

function extremes(segment: Segment): readonly Point[] {
  if (segment.kind === "line") return [segment.from, segment.to];
  const radius = arcRadius(segment);
  const sweep = arcSweep(segment);
  const start = angleOf(subtract(segment.from, segment.centre));
  const compass = [0, 1, 2, 3].filter((quarter) => {
    const ahead = wholeTurn(Math.sign(sweep) * ((quarter * Math.PI) / 2 - start));
    return ahead < Math.abs(sweep);
  });
  const [cx, cy] = segment.centre;
  const at: readonly Point[] = [
    [cx + radius, cy],
    [cx, cy + radius],
    [cx - radius, cy],
    [cx, cy - radius],
  ];
  return [segment.from, segment.to, ...compass.map((quarter) => at[quarter]!)];
}
