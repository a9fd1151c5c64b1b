import type { Count, Mm, Mm2, Point, Polygon } from "../plane/types.ts";
import { overlapArea } from "../plane/clip-polygons.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import type { LaySet } from "./bench-types.ts";
import { fillBottomLeft } from "./fill-bottom-left.ts";
import { knownDensities } from "./known-densities.ts";
import { layBound } from "./lay-bound.ts";
import { layOrders } from "./lay-orders.ts";
import { makeNoFitTable } from "./no-fit-table.ts";
import { type Effort, packStrip } from "./pack-strip.ts";
import { makeStripJob } from "./strip-job.ts";
import type { Strip, StripJob } from "./strip-types.ts";

/** One line of the lay bench. Densities are per cent of the strip's area. */
export interface LayBench {
  readonly name: string;
  readonly pieces: Count;
  readonly density: number;
  /** Best bottom-left fill over all orders, in the same run. */
  readonly bottomLeft: number;
  readonly bestKnown: number | null;
  /** Density as a share of the best known, and of bottom-left fill. */
  readonly ofBest: number | null;
  readonly ofBottomLeft: number;
  /** No lay can be denser than this. */
  readonly bound: number;
  /** Area by which pieces overlap or hang off the strip, as a share of the area of all pieces. */
  readonly fault: number;
}

/** What a lay comes to before it is compared with bottom-left fill. */
export type LaidSet = Omit<LayBench, "bottomLeft" | "ofBottomLeft">;

/** Lay one benchmark set and measure it. */
export function benchLaySet(set: LaySet, effort: Effort): LaidSet {
  const job = readLaySet(set);
  const strip = packStrip(job, effort);
  const bestKnown = set.bestKnown ?? knownDensities[set.name] ?? null;
  const density = densityAt(job, strip.length);
  return {
    name: set.name,
    pieces: job.items.length,
    density,
    bestKnown,
    ofBest: bestKnown === null ? null : density / bestKnown,
    bound: densityAt(job, layBound(job)),
    fault: measureFault(job, strip) / areaOf(job),
  };
}

/** Set a lay beside the best bottom-left fill of the same set over all orders. */
export function compareBottomLeft(set: LaySet, laid: LaidSet): LayBench {
  const job = readLaySet(set);
  const table = makeNoFitTable(job.forms);
  const lengths = layOrders(job).map(
    (order) => fillBottomLeft(job, table, order)?.length ?? Infinity,
  );
  const bottomLeft = densityAt(job, Math.min(...lengths));
  return { ...laid, bottomLeft, ofBottomLeft: laid.density / bottomLeft };
}

/** The strip job of a benchmark set. */
export const readLaySet = (set: LaySet): StripJob =>
  makeStripJob(set.stripWidth, set.items.map(readItem));

const areaOf = (job: StripJob): Mm2 => job.items.reduce((sum, item) => sum + item.area, 0);

const densityAt = (job: StripJob, length: Mm): number => (100 * areaOf(job)) / (job.width * length);

/** The files lay along x; here the length runs along y. Mirroring keeps what fits with what. */
function readItem({ points, quantity, rotations }: LaySet["items"][number]) {
  const swapped = points.map(([x, y]): Point => [y, x]);
  const outline: Polygon = polygonArea(swapped) < 0 ? [...swapped].reverse() : swapped;
  return { outline, copies: quantity, turns: rotations, flips: [false], stepX: 0, stepY: 0 };
}

/** Area of all overlaps, and of all that lies off the strip. */
function measureFault(job: StripJob, strip: Strip): Mm2 {
  const outlines = strip.places.map(({ form, x, y }) =>
    job.forms[form]!.polygon.map(([px, py]): Point => [px + x, py + y]),
  );
  const bed: Polygon = [
    [0, 0],
    [job.width, 0],
    [job.width, strip.length],
    [0, strip.length],
  ];
  return outlines.reduce((sum, one, i) => {
    const off = polygonArea(one) - overlapArea([one], [bed]);
    const shared = outlines.slice(i + 1).map((two) => overlapArea([one], [two]));
    return sum + Math.max(0, off) + shared.reduce((a, b) => a + b, 0);
  }, 0);
}
