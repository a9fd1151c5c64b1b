import { overlapArea, subtractRegion } from "../plane/clip-polygons.ts";
import { containsPoint } from "../plane/contains-point.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import type { Count, Mm, Mm2, Point, Polygon } from "../plane/types.ts";
import type { StripForm } from "./strip-types.ts";

/** A ground of any shape with spoiled places, lowest-left bound at the origin. */
export interface Remnant {
  readonly outline: Polygon;
  readonly flaws: readonly Polygon[];
}

/** A kind of piece that may lie on a ground, in any of its forms. */
export interface GroundKind {
  readonly outline: Polygon;
  readonly copies: Count;
  readonly forms: readonly StripForm[];
}

/** Where one piece lies on a ground. */
export interface RemnantPlace {
  /** Place of the piece's kind in the list. */
  readonly piece: Count;
  readonly form: StripForm;
  readonly x: Mm;
  readonly y: Mm;
}

/** Steps across and along a ground where no corner offers itself. @source our choice */
const gridSteps = 16;
/** Area that a placed piece may miss by rounding. */
const sliver: Mm2 = 0.05;

/**
 * Lay as many pieces as will go on a ground, the largest first, each as low and as far left as it
 * lies clear of the edge, of flaws and of the others.
 */
export function fillGround(
  remnant: Remnant,
  kinds: readonly GroundKind[],
): readonly RemnantPlace[] {
  const sound = subtractRegion([remnant.outline], remnant.flaws);
  const placed: RemnantPlace[] = [];
  const taken: Polygon[] = [];
  const order = kinds
    .map((kind, index) => ({ kind, index, area: Math.abs(polygonArea(kind.outline)) }))
    .sort((a, b) => b.area - a.area || a.index - b.index);
  let left = Math.abs(polygonArea(remnant.outline));
  for (const { kind, index, area } of order) {
    for (let copy = 0; copy < kind.copies && area <= left; copy++) {
      const spot = findSpot(kind.forms, { remnant, sound, taken });
      if (spot === null) break;
      placed.push({ piece: index, ...spot });
      taken.push(moved(spot.form.polygon, spot.x, spot.y));
      left -= area;
    }
  }
  return placed;
}

interface Ground {
  readonly remnant: Remnant;
  readonly sound: readonly Polygon[];
  readonly taken: readonly Polygon[];
}

type Spot = Omit<RemnantPlace, "piece">;

function findSpot(forms: readonly StripForm[], ground: Ground): Spot | null {
  let best: Spot | null = null;
  for (const form of forms) {
    for (const [x, y] of candidates(form, ground)) {
      if (best !== null && (y > best.y + 1e-9 || (y > best.y - 1e-9 && x >= best.x))) break;
      if (!liesClear(form, [x, y], ground)) continue;
      best = { form, x, y };
      break;
    }
  }
  return best;
}

/** Corners where something begins or ends, and a grid between; lowest first, then leftmost. */
function candidates({ width, height }: StripForm, ground: Ground): readonly Point[] {
  const { remnant, taken } = ground;
  const bounds = pointBounds(remnant.outline);
  const shapes = [...remnant.flaws, ...taken].map((shape) => pointBounds(shape));
  const along = (axis: 0 | 1, size: Mm): readonly Mm[] => {
    const most = bounds.max[axis] - size;
    const grid = Array.from({ length: gridSteps + 1 }, (_, i) => (i * most) / gridSteps);
    const corners = remnant.outline.flatMap((point) => [point[axis], point[axis] - size]);
    const ends = shapes.flatMap(({ min, max }) => [max[axis], min[axis] - size]);
    const all = [0, most, ...grid, ...corners, ...ends];
    return [...new Set(all.filter((at) => at >= -1e-9 && at <= most + 1e-9))].sort((a, b) => a - b);
  };
  if (width > bounds.max[0] + 1e-6 || height > bounds.max[1] + 1e-6) return [];
  const xs = along(0, width);
  return along(1, height).flatMap((y) => xs.map((x): Point => [x, y]));
}

function liesClear(
  { polygon }: StripForm,
  [x, y]: Point,
  { remnant, sound, taken }: Ground,
): boolean {
  const corners = moved(polygon, x, y);
  const middle = corners.map((corner, i): Point => {
    const next = corners[(i + 1) % corners.length]!;
    return [(corner[0] + next[0]) / 2, (corner[1] + next[1]) / 2];
  });
  // Nudged inward, so that a corner on the edge of the cloth counts as on it.
  const centre = pointBounds(corners);
  const [cx, cy] = [(centre.min[0] + centre.max[0]) / 2, (centre.min[1] + centre.max[1]) / 2];
  const isOn = ([px, py]: Point): boolean =>
    containsPoint(remnant.outline, [px + (cx - px) * 1e-6, py + (cy - py) * 1e-6]);
  if (![...corners, ...middle].every(isOn)) return false;
  const own = pointBounds(corners);
  const isNear = (other: Polygon): boolean => {
    const { min, max } = pointBounds(other);
    return min[0] < own.max[0] && max[0] > own.min[0] && min[1] < own.max[1] && max[1] > own.min[1];
  };
  if (taken.some((other) => isNear(other) && overlapArea([corners], [other]) > sliver))
    return false;
  return overlapArea([corners], sound) >= Math.abs(polygonArea(corners)) - sliver;
}

const moved = (polygon: Polygon, x: Mm, y: Mm): Polygon =>
  polygon.map(([px, py]): Point => [px + x, py + y]);
