import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Point3 } from "../solids/types.ts";
import { drawDimension } from "./draw-dimension.ts";
import { nearness, project, type SpaceView } from "./space-view.ts";
import type { Ink } from "./types.ts";

interface BoxRun {
  readonly from: Point3;
  readonly to: Point3;
  readonly out: Point3;
  readonly rank: number;
}

/** Paper distance from the box round the thing to its dimension lines. */
const LANE: Mm = 9;

/**
 * The three overall sizes of the box round a thing, each along an outer edge of that box as seen.
 *
 * Length and depth stand below, height at the side, so that they never cross the thing.
 */
export function drawBoxSizes(
  { min, size }: { readonly min: Point3; readonly size: Point3 },
  view: SpaceView,
  write: (length: Mm) => string,
  shares: readonly [Ratio, Ratio, Ratio] = [0.5, 0.5, 0.5],
): Ink[] {
  return ([0, 1, 2] as const).flatMap((axis) => {
    const [best] = outerRuns(min, size, axis, view).sort((a, b) => b.rank - a.rank);
    if (!best || size[axis] < 1e-6) return [];
    const [from, to] = [project(view, best.from), project(view, best.to)];
    const out = project({ ...view, scale: 1 }, best.out);
    const reach = Math.hypot(out[0], out[1]) || 1;
    const offset: Point = [(out[0] / reach) * LANE, (out[1] / reach) * LANE];
    const ends = leftToRight(from, to);
    return drawDimension({ ...ends, offset, text: write(size[axis]), share: shares[axis] });
  });
}

function leftToRight(from: Point, to: Point): { from: Point; to: Point } {
  return from[0] <= to[0] ? { from, to } : { from: to, to: from };
}

/** The box's edges along one axis that lie on its picture's rim, each with a way out. */
function outerRuns(min: Point3, size: Point3, axis: 0 | 1 | 2, view: SpaceView): BoxRun[] {
  const [j, k] = ([0, 1, 2] as const).filter((other) => other !== axis);
  if (j === undefined || k === undefined) return [];
  const runs: BoxRun[] = [];
  for (const sj of [0, 1] as const) {
    for (const sk of [0, 1] as const) {
      const outJ = direction(j, sj);
      const outK = direction(k, sk);
      const facesJ = nearness(view, outJ) > 0;
      const facesK = nearness(view, outK) > 0;
      if (facesJ === facesK) continue; // not on the rim of the picture
      const corner = (along: 0 | 1): Point3 => {
        const at: [number, number, number] = [min[0], min[1], min[2]];
        at[axis] += along * size[axis];
        at[j] += sj * size[j];
        at[k] += sk * size[k];
        return at;
      };
      const [from, to] = [corner(0), corner(1)];
      const [a, b] = [project(view, from), project(view, to)];
      const edge: Point = [b[0] - a[0], b[1] - a[1]];
      const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      const out = squarer(outJ, outK, edge, view);
      runs.push({ from, to, out, rank: axis === 2 ? -middle[0] : middle[1] });
    }
  }
  return runs;
}

function direction(axis: 0 | 1 | 2, side: 0 | 1): Point3 {
  const out: [number, number, number] = [0, 0, 0];
  out[axis] = side === 1 ? 1 : -1;
  return out;
}

/** Of two ways out, the one that stands more squarely on the edge as drawn. */
function squarer(a: Point3, b: Point3, edge: Point, view: SpaceView): Point3 {
  const slant = (out: Point3) => {
    const [x, y] = project(view, out);
    return Math.abs(x * edge[0] + y * edge[1]) / (Math.hypot(x, y) * Math.hypot(...edge) || 1);
  };
  return slant(a) <= slant(b) + 1e-9 ? a : b;
}
