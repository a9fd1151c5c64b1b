import { pointBounds } from "../plane/loop-bounds.ts";
import type { Count, Mm, Point, Polygon } from "../plane/types.ts";
import { type CutItem, type CutTree, sameSize } from "./cut-job.ts";
import type { Cut, CutPlace, Offcut } from "./types.ts";

/** What a cutting tree comes to on the bench, kerf taken off again. */
export interface ListedCuts {
  readonly places: readonly CutPlace[];
  readonly cuts: readonly Cut[];
  readonly offcuts: readonly Offcut[];
}

const kinds = ["cross", "rip", "slice"] as const;

/**
 * Places, numbered cuts and offcuts of one piece of stock. A cut divides a piece that the cuts
 * before it have made; the nearer piece is finished before the farther one is taken up. The blade
 * takes its kerf beyond the line at `at`. Pieces no thicker than the kerf are dust, not offcuts.
 */
export function listCuts(tree: CutTree, items: readonly CutItem[], kerf: Mm): ListedCuts {
  const places: CutPlace[] = [];
  const cuts: Cut[] = [];
  const offcuts: Offcut[] = [];
  visit(tree, {
    split: (axis, at, size, near) =>
      cuts.push({
        order: cuts.length + 1,
        kind: kinds[axis]!,
        axis,
        at: at[axis]! + near - kerf,
        of: { at, size: lessKerf(size, kerf) },
      }),
    item: (index, at, size) => {
      const item = items[index]!;
      const { part, copy, layer, twin, hasSpare } = item;
      const real = lessKerf(size, kerf);
      const rings = item.outline === null ? [] : [item.outline];
      const lie = layRings(item, at, real);
      const [outline = null] = rings.map(lie);
      const holes = item.holes?.map(lie);
      places.push({
        part,
        copy,
        at,
        size: real,
        layer,
        outline,
        ...(holes === undefined ? {} : { holes }),
        ...(twin === undefined ? {} : { twin }),
        ...(hasSpare === undefined ? {} : { hasSpare }),
      });
      // Holes come first, while there is something left to hold the part by.
      const free = [
        ...(holes ?? []).map(boundsOf),
        ...(outline === null ? [] : [{ at, size: real }]),
      ];
      for (const of of free) {
        cuts.push({ order: cuts.length + 1, kind: "free", axis: 0, at: of.at[0]!, of });
      }
    },
    free: (at, size) => {
      const real = lessKerf(size, kerf);
      if (real.every((each) => each > leastOffcut)) offcuts.push({ at, size: real, use: null });
    },
  });
  return { places, cuts, offcuts };
}

/** Anything thinner is a shaving. */
const leastOffcut: Mm = 0.5;

const lessKerf = (size: readonly Mm[], kerf: Mm): readonly Mm[] => size.map((each) => each - kerf);

/** Takes rings of a part to where it lies, turned by a quarter when its rectangle is. */
function layRings(
  item: CutItem,
  at: readonly Mm[],
  size: readonly Mm[],
): (ring: Polygon) => Polygon {
  const own = item.own ?? (item.outline === null ? size : boundsOf(item.outline).size);
  const isTurned = Math.abs(own[0]! - size[0]!) > sameSize;
  return (ring) =>
    ring.map(([x, y]): Point => {
      const [left, low] = isTurned ? [own[1]! - y, x] : [x, y];
      return [left + at[0]!, low + at[1]!];
    });
}

/** The box round a ring, as a piece of stock. */
export function boundsOf(ring: Polygon): {
  readonly at: readonly Mm[];
  readonly size: readonly Mm[];
} {
  const { min, max } = pointBounds(ring);
  return { at: min, size: [max[0] - min[0], max[1] - min[1]] };
}

interface Visitor {
  readonly split: (axis: Count, at: readonly Mm[], size: readonly Mm[], near: Mm) => void;
  readonly item: (index: Count, at: readonly Mm[], size: readonly Mm[]) => void;
  readonly free: (at: readonly Mm[], size: readonly Mm[]) => void;
}

function visit(tree: CutTree, visitor: Visitor): void {
  switch (tree.kind) {
    case "split":
      visitor.split(tree.axis, tree.at, tree.size, tree.near.size[tree.axis]!);
      visit(tree.near, visitor);
      visit(tree.far, visitor);
      return;
    case "item":
      visitor.item(tree.item, tree.at, tree.size);
      return;
    case "free":
      visitor.free(tree.at, tree.size);
  }
}
