import type { Mm, Point, Ratio } from "../plane/types.ts";

/** A place on a run of points and its direction there, of length one. */
export interface PathPlace {
  readonly at: Point;
  readonly along: Point;
}

/** The place at a share of a run's whole length; null for a run without length. */
export function alongPath(points: readonly Point[], share: Ratio): PathPlace | null {
  const target = pathLength(points) * share;
  let done = 0;
  let last: PathPlace | null = null;
  for (let i = 0; i + 1 < points.length; i += 1) {
    const [a, b] = [points[i], points[i + 1]];
    if (!a || !b) continue;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length === 0) continue;
    const along: Point = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    last = { at: b, along };
    if (done + length >= target - 1e-9) {
      const step = Math.min(length, target - done);
      return { at: [a[0] + along[0] * step, a[1] + along[1] * step], along };
    }
    done += length;
  }
  return last;
}

export function pathLength(points: readonly Point[]): Mm {
  return points.reduce((sum, point, index) => {
    const next = points[index + 1];
    return next ? sum + Math.hypot(next[0] - point[0], next[1] - point[1]) : sum;
  }, 0);
}
