import type { Count, Degrees, Point, Polygon } from "../plane/types.ts";
import { type NoFit, findNoFit, perEdge } from "./no-fit.ts";
import type { StripForm } from "./strip-types.ts";
import { turnPoint } from "./turn-point.ts";

/** Gives the no-fit region of one form round another, worked out on first use. */
export type NoFitTable = (fixed: Count, moving: Count) => NoFit;

/**
 * A table of no-fit regions for the forms of one job. The two ways round are mirror images, and two
 * forms turned together have the same region, turned: both are found once.
 */
export function makeNoFitTable(forms: readonly StripForm[]): NoFitTable {
  const found: (NoFit | undefined)[] = Array.from({ length: forms.length ** 2 });
  const shapes = numberShapes(forms);
  const turned = new Map<string, NoFit>();
  const nameOf = (fixed: Count, moving: Count): string => {
    const between = forms[moving]!.turn - forms[fixed]!.turn;
    return `${shapes[fixed]} ${shapes[moving]} ${((between % 360) + 360) % 360}`;
  };
  return (fixed, moving) => {
    const known = found[fixed * forms.length + moving];
    if (known !== undefined) return known;
    const alike = turned.get(nameOf(fixed, moving));
    const region =
      (alike && turnRegion(alike, forms[fixed]!, forms[moving]!)) ??
      findNoFit(forms[fixed]!, forms[moving]!);
    const opposite = turnHalf(region);
    turned.set(nameOf(moving, fixed), opposite);
    turned.set(nameOf(fixed, moving), region);
    found[moving * forms.length + fixed] = opposite;
    found[fixed * forms.length + moving] = region;
    return region;
  };
}

/** The same number for forms turned from the same outline, flipped alike. */
function numberShapes(forms: readonly StripForm[]): readonly Count[] {
  const known = [new Map<Polygon, Count>(), new Map<Polygon, Count>()] as const;
  return forms.map(({ outline, isFlipped }, i) => {
    const numbers = known[isFlipped ? 1 : 0];
    if (!numbers.has(outline)) numbers.set(outline, i);
    return numbers.get(outline)!;
  });
}

/** The region turned half round the origin: moving and fixed change places. */
function turnHalf(region: NoFit): NoFit {
  const edges = region.edges.map((value) => -value);
  return {
    edges,
    fixed: region.moving,
    moving: region.fixed,
    parts: undefined,
    field: undefined,
    asked: 0,
    minX: -region.maxX,
    minY: -region.maxY,
    maxX: -region.minX,
    maxY: -region.minY,
  };
}

/**
 * The region of two forms from that of the same outlines turned by some quarter turns; null for any
 * other turn, which would not be exact.
 */
function turnRegion(region: NoFit, fixed: StripForm, moving: StripForm): NoFit | null {
  const turn: Degrees = fixed.turn - region.fixed.turn;
  if (turn % 90 !== 0) return null;
  // Shifts between the outlines' own origins turn; shifts between lowest-left bounds do not.
  const before = offsetOf(region.fixed, region.moving);
  const after = offsetOf(fixed, moving);
  const edges = new Float64Array(region.edges.length);
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < edges.length; i += perEdge) {
    for (let k = i; k < i + 4; k += 2) {
      const at = [region.edges[k]! + before[0], region.edges[k + 1]! + before[1]] as const;
      const [x, y] = turnPoint(at, turn);
      edges[k] = x - after[0];
      edges[k + 1] = y - after[1];
      minX = Math.min(minX, edges[k]!);
      minY = Math.min(minY, edges[k + 1]!);
      maxX = Math.max(maxX, edges[k]!);
      maxY = Math.max(maxY, edges[k + 1]!);
    }
    const [nx, ny] = turnPoint([region.edges[i + 4]!, region.edges[i + 5]!], turn);
    edges[i + 4] = nx;
    edges[i + 5] = ny;
  }
  return {
    ...region,
    edges,
    fixed,
    moving,
    parts: undefined,
    field: undefined,
    asked: 0,
    minX,
    minY,
    maxX,
    maxY,
  };
}

/** From the shift between lowest-left bounds to the shift between the outlines' own origins. */
const offsetOf = (fixed: StripForm, moving: StripForm): Point => [
  moving.origin[0] - fixed.origin[0],
  moving.origin[1] - fixed.origin[1],
];
