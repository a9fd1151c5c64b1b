import type { Count, Mm } from "../plane/types.ts";
import type { DepthField } from "./depth-field.ts";
import { perEdge } from "./no-fit.ts";
import { isWithinEdges } from "./within-edges.ts";

/** Numbers kept for each edge of a field, and before them. */
const perFigure = 10;
const heading = 4;
/** Cells are worked out in blocks of this many each way: first what a block needs, then each cell. */
const perBlock = 4;

interface Bounds {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}

/** The field of a region in one cell that lists every edge: quick to make, and slow to ask. */
export function makeCoarseField(edges: Float64Array, bounds: Bounds): DepthField {
  const figures = Float64Array.from([...inCells(bounds, 1), ...listFigures(edges)]);
  const count = edges.length / perEdge;
  const near = Int32Array.from({ length: count }, (_, i) => heading + i * perFigure);
  return { cells: 1, starts: Int32Array.of(0, count), near, figures, edges };
}

/** The same field in many cells: it gives the same depths. */
export function makeFineField(
  { figures, edges, near: all }: DepthField,
  bounds: Bounds,
): DepthField {
  // About four cells to an edge: more cells hardly shorten the lists.
  const cells = perBlock * Math.ceil((Math.sqrt(all.length) + 1) / 2);
  const [minX, minY, perX, perY] = inCells(bounds, cells);
  figures.set([minX, minY, perX, perY]);
  const lists: Int32Array[] = [];
  const nearTo = (among: Int32Array, column: number, row: number, size: number): Int32Array => {
    const [wide, high] = [size / perX, size / perY];
    const x = minX + column / perX + wide / 2;
    const y = minY + row / perY + high / 2;
    return listNear(edges, figures, among, x, y, Math.hypot(wide, high) / 2);
  };
  for (let row = 0; row < cells; row += perBlock) {
    for (let column = 0; column < cells; column += perBlock) {
      const among = nearTo(all, column, row, perBlock);
      for (let k = 0; k < perBlock ** 2; k++) {
        const [c, r] = [column + (k % perBlock), row + Math.floor(k / perBlock)];
        lists[r * cells + c] = among.length === 0 ? among : nearTo(among, c, r, 1);
      }
    }
  }
  const starts = new Int32Array(lists.length + 1);
  lists.forEach((list, cell) => (starts[cell + 1] = starts[cell]! + list.length));
  const near = new Int32Array(starts[lists.length]!);
  lists.forEach((list, cell) => near.set(list, starts[cell]));
  return { cells, starts, near, figures, edges };
}

const inCells = ({ minX, minY, maxX, maxY }: Bounds, cells: Count) =>
  [minX, minY, cells / (maxX - minX), cells / (maxY - minY)] as const;

/** The edges one of which is nearest to any point of a cell; none for a cell wholly outside. */
function listNear(
  edges: Float64Array,
  figures: Float64Array,
  among: Int32Array,
  x: Mm,
  y: Mm,
  reach: Mm,
): Int32Array {
  const far = new Float64Array(among.length);
  let nearest = Infinity;
  for (let n = 0; n < among.length; n++) {
    far[n] = distanceTo(figures, among[n]!, x, y);
    if (far[n]! < nearest) nearest = far[n]!;
  }
  if (nearest > reach * (1 + 1e-9) && !isWithinEdges(edges, x, y)) return new Int32Array(0);
  return among.filter((_, n) => far[n]! <= nearest + 2 * reach * (1 + 1e-9));
}

function distanceTo(figures: Float64Array, i: Count, x: Mm, y: Mm): Mm {
  const dx = x - figures[i]!;
  const dy = y - figures[i + 1]!;
  const ux = figures[i + 2]!;
  const uy = figures[i + 3]!;
  const along = Math.min(figures[i + 4]!, Math.max(0, dx * ux + dy * uy));
  const awayX = dx - along * ux;
  const awayY = dy - along * uy;
  return Math.sqrt(awayX * awayX + awayY * awayY);
}

/** Corners nearer than this meet. */
const meeting: Mm = 1e-7;

/** Figures of all edges, as `DepthField` lists them. */
function listFigures(edges: Float64Array): readonly number[] {
  const figures: number[] = [];
  for (let i = 0; i < edges.length; i += perEdge) {
    const [ax, ay, bx, by] = [edges[i]!, edges[i + 1]!, edges[i + 2]!, edges[i + 3]!];
    const [nx, ny] = [edges[i + 4]!, edges[i + 5]!];
    const before = findEdge(edges, 2, ax, ay);
    const after = findEdge(edges, 0, bx, by);
    const atStart =
      before === null ? [NaN, NaN] : [edges[before + 4]! + nx, edges[before + 5]! + ny];
    const atEnd = after === null ? [NaN, NaN] : [edges[after + 4]! + nx, edges[after + 5]! + ny];
    const sure = before === null || after === null ? NaN : 1;
    figures.push(ax, ay, -ny, nx, Math.hypot(bx - ax, by - ay), ...atStart, ...atEnd, sure);
  }
  return figures;
}

/** The only edge with its start (0) or end (2) at a corner; null when there is none or more. */
function findEdge(edges: Float64Array, end: 0 | 2, x: Mm, y: Mm): Count | null {
  let found: Count | null = null;
  for (let i = 0; i < edges.length; i += perEdge) {
    if (Math.abs(edges[i + end]! - x) > meeting || Math.abs(edges[i + end + 1]! - y) > meeting) {
      continue;
    }
    if (found !== null) return null;
    found = i;
  }
  return found;
}
