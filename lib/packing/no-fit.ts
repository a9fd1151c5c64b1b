import type { Count, Mm, Point, Polygon } from "../plane/types.ts";
import { uniteSimple } from "../plane/clip-polygons.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import type { DepthField } from "./depth-field.ts";
import type { StripForm } from "./strip-types.ts";

/**
 * The no-fit region of a moving form round a fixed one: the shifts (moving corner less fixed
 * corner) at which the two overlap. On its edge they touch.
 */
export interface NoFit {
  /** For each edge: start x and y, end x and y, outward unit normal x and y. */
  readonly edges: Float64Array;
  /** What it is the region of. */
  readonly fixed: StripForm;
  readonly moving: StripForm;
  /** Edges of the convex parts the region is made of, each in the same figures. Made on first use. */
  parts: readonly Float64Array[] | undefined;
  /** Made on first use. */
  field: DepthField | undefined;
  /** How often its depth has been asked for. */
  asked: Count;
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}

/** Numbers kept for each edge of a no-fit region. */
export const perEdge = 6;

/**
 * The no-fit region as the union of the convex parts' Minkowski sums with the mirrored mover.
 *
 * @source Bennell and Oliveira 2008, "The geometry of nesting problems: a tutorial", EJOR 184
 */
export function findNoFit(fixed: StripForm, moving: StripForm): NoFit {
  const sums = sumParts(fixed, moving);
  const loops = sums.length === 1 ? sums : uniteSimple(sums);
  const { min, max } = pointBounds(loops.flat());
  return {
    edges: Float64Array.from(loops.flatMap(listEdges)),
    fixed,
    moving,
    parts: undefined,
    field: undefined,
    asked: 0,
    minX: min[0],
    minY: min[1],
    maxX: max[0],
    maxY: max[1],
  };
}

/** Edges of the convex parts of a region. They overlap; together they are the region. */
export const noFitParts = (region: NoFit): readonly Float64Array[] =>
  (region.parts ??= sumParts(region.fixed, region.moving).map((sum) =>
    Float64Array.from(listEdges(sum)),
  ));

const sumParts = (fixed: StripForm, moving: StripForm): readonly Polygon[] =>
  fixed.parts.flatMap((a) => moving.parts.map((b) => sumConvex(a, mirrored(b))));

/** The mover turned half round the origin; still counter-clockwise. */
const mirrored = (polygon: Polygon): Polygon => polygon.map(([x, y]): Point => [-x, -y]);

/** Minkowski sum of two convex polygons: their edges merged by direction. */
function sumConvex(one: Polygon, two: Polygon): Polygon {
  const a = fromLowest(one);
  const b = fromLowest(two);
  const sum: Point[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    const [ax, ay] = a[i % a.length]!;
    const [bx, by] = b[j % b.length]!;
    sum.push([ax + bx, ay + by]);
    const [nextAx, nextAy] = a[(i + 1) % a.length]!;
    const [nextBx, nextBy] = b[(j + 1) % b.length]!;
    const turn = (nextAx - ax) * (nextBy - by) - (nextAy - ay) * (nextBx - bx);
    const isFirst = j >= b.length || (i < a.length && turn >= 0);
    const isSecond = i >= a.length || (j < b.length && turn <= 0);
    if (isFirst) i += 1;
    if (isSecond) j += 1;
  }
  return sum;
}

function fromLowest(polygon: Polygon): Polygon {
  let lowest = 0;
  polygon.forEach(([x, y], i) => {
    const [lowX, lowY] = polygon[lowest]!;
    if (y < lowY || (y === lowY && x < lowX)) lowest = i;
  });
  return [...polygon.slice(lowest), ...polygon.slice(0, lowest)];
}

function listEdges(loop: Polygon): readonly number[] {
  const edges: number[] = [];
  for (let i = 0; i < loop.length; i++) {
    const [ax, ay] = loop[i]!;
    const [bx, by] = loop[(i + 1) % loop.length]!;
    const length = Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2);
    if (length > 0) edges.push(ax, ay, bx, by, (by - ay) / length, (ax - bx) / length);
  }
  return edges;
}
