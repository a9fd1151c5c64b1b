import type { Count, Mm, Point } from "../plane/types.ts";
import { crossesNoWall, stripLength } from "./clear-place.ts";
import { type NoFit, perEdge } from "./no-fit.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import { noFitDepth, touching } from "./no-fit-depth.ts";
import { stepCandidates } from "./step-candidates.ts";
import type { Strip, StripItem, StripJob, StripPlace } from "./strip-types.ts";

/**
 * Lay the items one by one, each at its lowest clear place, leftmost among equals, trying all its
 * forms. `order` lists every item once. Every item must fit the width in one of its forms. Null as soon
 * as the strip cannot become shorter than `limit`.
 *
 * The lowest clear place is a corner of a no-fit region, a crossing of two of their edges, or a
 * crossing with the strip's own edge, so that only these are tried.
 *
 * @source Gomes and Oliveira 2002, "A 2-exchange heuristic for nesting problems", EJOR 141
 */
export function fillBottomLeft(
  job: StripJob,
  table: NoFitTable,
  order: readonly Count[],
  limit: Mm = Infinity,
): Strip | null {
  const placed: StripPlace[] = [];
  const places: StripPlace[] = [];
  const floors = new Float64Array(job.forms.length);
  for (const index of order) {
    const place = findLowest(job, table, job.items[index]!, placed, { limit, floors });
    if (place === null) return null;
    placed.push(place);
    places[index] = place;
  }
  return { places, length: stripLength(job, places) };
}

/** Where the lowest clear place is looked for. */
interface Search {
  /** It has to end below this. */
  readonly limit: Mm;
  /**
   * For each form a height below which it has no clear place. What is in the way stays there while
   * others are added, so that each place found raises the floor of its form.
   */
  readonly floors?: Float64Array;
}

/**
 * The lowest clear place of one item among others; of two forms, the one whose top is lower. Null when
 * it would not end below the limit.
 */
export function findLowest(
  job: StripJob,
  table: NoFitTable,
  item: StripItem,
  placed: readonly StripPlace[],
  { limit, floors }: Search,
): StripPlace | null {
  let best: StripPlace | null = null;
  let bestTop = limit - touching;
  for (const form of item.forms) {
    const { width, height } = job.forms[form]!;
    if (width > job.width + touching) continue;
    const floor = floors?.[form] ?? 0;
    if (floor > bestTop - height) continue;
    const place = findFormPlace(job, table, item, form, placed, [floor, bestTop - height]);
    if (place === null) continue;
    if (floors !== undefined) floors[form] = place.y;
    const top = place.y + height;
    if (top > bestTop - touching && (best === null || place.x >= best.x)) continue;
    [best, bestTop] = [place, top];
  }
  if (best !== null || limit < Infinity) return best;
  const { stepY, startX = 0, startY = 0 } = item;
  const top = Math.max(stripLength(job, placed), ...job.walls);
  const y = stepY === 0 ? top : startY + Math.max(0, Math.ceil((top - startY) / stepY)) * stepY;
  return { form: item.forms[0]!, x: startX, y };
}

function findFormPlace(
  job: StripJob,
  table: NoFitTable,
  item: StripItem,
  form: Count,
  placed: readonly StripPlace[],
  [floor, limit]: readonly [Mm, Mm],
): StripPlace | null {
  const room = Math.max(0, job.width - job.forms[form]!.width);
  const regions = placed
    .map((other) => ({ region: table(other.form, form), at: other }))
    .filter(({ region, at }) => at.y + region.maxY > floor - 2 * touching);
  const asked = [...regions];
  let best: StripPlace | null = null;
  const consider = (x: Mm, y: Mm): void => {
    if (x < -touching || x > room + touching || y < floor - touching) return;
    if (y > (best === null ? limit : best.y + touching)) return;
    const place = { form, x: Math.min(Math.max(x, 0), room), y: Math.max(y, 0) };
    if (best !== null && !isLower(place, best)) return;
    if (crossesNoWall(job, form, place.y) && isClearOf(asked, place)) best = place;
  };
  const ceiling = (): Mm => best?.y ?? limit;
  const top = Math.max(stripLength(job, placed), ...job.walls);
  if (item.stepX > 0 || item.stepY > 0) {
    stepCandidates(item, room, regions, top, consider, () => best !== null);
    return best;
  }
  for (const y of [0, ...job.walls]) consider(0, y);
  for (const one of regions) considerEdges(one, room, job.walls, ceiling, consider);
  considerCrossings(regions, room, ceiling, consider);
  if (best === null) consider(0, top);
  return best;
}

/**
 * Whether a place keeps clear of placed regions. Touching is clear. What was in the way is asked first
 * the next time: places tried one after another lie near one another.
 */
function isClearOf(regions: PlacedRegion[], { x, y }: StripPlace): boolean {
  for (let i = 0; i < regions.length; i++) {
    const one = regions[i]!;
    if (noFitDepth(one.region, x - one.at.x, y - one.at.y) <= touching) continue;
    regions[i] = regions[0]!;
    regions[0] = one;
    return false;
  }
  return true;
}

const isLower = (a: StripPlace, b: StripPlace): boolean =>
  a.y < b.y - touching || (a.y < b.y + touching && a.x < b.x - touching);

/** Corners of one region, and where its edges cross the strip's edges and the walls. */
function considerEdges(
  { region: { edges, minX, minY, maxX, maxY }, at }: PlacedRegion,
  room: Mm,
  walls: readonly Mm[],
  ceiling: () => Mm,
  consider: (x: Mm, y: Mm) => void,
): void {
  if (minY + at.y > ceiling() + touching || maxY + at.y < 0) return;
  if (minX + at.x > room || maxX + at.x < 0) return;
  for (let i = 0; i < edges.length; i += perEdge) {
    const ax = edges[i]! + at.x;
    const ay = edges[i + 1]! + at.y;
    const bx = edges[i + 2]! + at.x;
    const by = edges[i + 3]! + at.y;
    if ((ay < 0 && by < 0) || (ay > ceiling() + touching && by > ceiling() + touching)) continue;
    consider(ax, ay);
    if (ax < 0 !== bx < 0) consider(0, ay - (ax * (by - ay)) / (bx - ax));
    if (ax < room !== bx < room) consider(room, ay + ((room - ax) * (by - ay)) / (bx - ax));
    if (ay < 0 !== by < 0) consider(ax - (ay * (bx - ax)) / (by - ay), 0);
    for (const y of walls) {
      if (ay < y !== by < y) consider(ax + ((y - ay) * (bx - ax)) / (by - ay), y);
    }
  }
}

interface PlacedRegion {
  readonly region: NoFit;
  readonly at: StripPlace;
}

/** Where the edges of two regions cross. */
function considerCrossings(
  regions: readonly PlacedRegion[],
  room: Mm,
  ceiling: () => Mm,
  consider: (x: Mm, y: Mm) => void,
): void {
  regions.forEach((one, i) => {
    for (const two of regions.slice(i + 1)) {
      const low = Math.max(one.region.minY + one.at.y, two.region.minY + two.at.y);
      const high = Math.min(one.region.maxY + one.at.y, two.region.maxY + two.at.y);
      const left = Math.max(0, one.region.minX + one.at.x, two.region.minX + two.at.x);
      const right = Math.min(room, one.region.maxX + one.at.x, two.region.maxX + two.at.x);
      if (low > high || left > right || high < 0 || low > ceiling()) continue;
      crossRegions(one, two, ceiling(), consider);
    }
  });
}

function crossRegions(
  one: PlacedRegion,
  two: PlacedRegion,
  ceiling: Mm,
  consider: (x: Mm, y: Mm) => void,
): void {
  const window: Window = {
    left: Math.max(one.region.minX + one.at.x, two.region.minX + two.at.x),
    right: Math.min(one.region.maxX + one.at.x, two.region.maxX + two.at.x),
    low: Math.max(0, one.region.minY + one.at.y, two.region.minY + two.at.y),
    high: Math.min(ceiling, one.region.maxY + one.at.y, two.region.maxY + two.at.y),
  };
  const a = edgesWithin(one, window);
  if (a.length === 0) return;
  const b = edgesWithin(two, window);
  for (const i of a) {
    const ax = one.region.edges[i]! + one.at.x;
    const ay = one.region.edges[i + 1]! + one.at.y;
    const ex = one.region.edges[i + 2]! + one.at.x;
    const ey = one.region.edges[i + 3]! + one.at.y;
    for (const j of b) {
      const cy = two.region.edges[j + 1]! + two.at.y;
      const fy = two.region.edges[j + 3]! + two.at.y;
      if ((cy < ay && fy < ay && cy < ey && fy < ey) || (cy > ay && fy > ay && cy > ey && fy > ey))
        continue;
      const cx = two.region.edges[j]! + two.at.x;
      const fx = two.region.edges[j + 2]! + two.at.x;
      if ((cx < ax && fx < ax && cx < ex && fx < ex) || (cx > ax && fx > ax && cx > ex && fx > ex))
        continue;
      const point = crossLines(ax, ay, ex - ax, ey - ay, cx, cy, fx - cx, fy - cy);
      if (point !== null) consider(point[0], point[1]);
    }
  }
}

interface Window {
  readonly left: Mm;
  readonly right: Mm;
  readonly low: Mm;
  readonly high: Mm;
}

/** Where in its figures the edges of a placed region stand that reach into a window. */
function edgesWithin({ region: { edges }, at }: PlacedRegion, window: Window): readonly Count[] {
  const found: Count[] = [];
  for (let i = 0; i < edges.length; i += perEdge) {
    const ax = edges[i]! + at.x;
    const bx = edges[i + 2]! + at.x;
    if ((ax < window.left && bx < window.left) || (ax > window.right && bx > window.right))
      continue;
    const ay = edges[i + 1]! + at.y;
    const by = edges[i + 3]! + at.y;
    if ((ay < window.low && by < window.low) || (ay > window.high && by > window.high)) continue;
    found.push(i);
  }
  return found;
}

/** Where two stretches of line cross, null when they do not or run alike. */
function crossLines(ax: Mm, ay: Mm, ux: Mm, uy: Mm, cx: Mm, cy: Mm, vx: Mm, vy: Mm): Point | null {
  const across = ux * vy - uy * vx;
  if (across === 0) return null;
  const s = ((cx - ax) * vy - (cy - ay) * vx) / across;
  const t = ((cx - ax) * uy - (cy - ay) * ux) / across;
  if (s < 0 || s > 1 || t < 0 || t > 1) return null;
  return [ax + s * ux, ay + s * uy];
}
