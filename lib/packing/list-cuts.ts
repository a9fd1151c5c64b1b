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
      const { part, copy, layer } = item;
      const real = lessKerf(size, kerf);
      const outline = item.outline && layOutline(item.outline, at, real);
      places.push({ part, copy, at, size: real, layer, outline });
      if (outline === null) return;
      const of = { at, size: real };
      cuts.push({ order: cuts.length + 1, kind: "free", axis: 0, at: at[0]!, of });
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

/** A part's outline where it lies, turned by a quarter when its rectangle is. */
function layOutline(outline: Polygon, at: readonly Mm[], size: readonly Mm[]): Polygon {
  const own = pointBounds(outline);
  const isTurned = Math.abs(own.max[0] - own.min[0] - size[0]!) > sameSize;
  const turned = isTurned ? outline.map(([x, y]): Point => [-y, x]) : outline;
  const { min } = pointBounds(turned);
  return turned.map(([x, y]): Point => [x - min[0] + at[0]!, y - min[1] + at[1]!]);
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
