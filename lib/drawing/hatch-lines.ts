import { ClipperD, ClipType, FillRule, type PathD, type PathsD } from "clipper2-ts";
import type { Degrees, Mm, Point, Polygon } from "../plane/types.ts";
import { boxOfPoints } from "./boxes.ts";
import type { Box } from "./types.ts";

/** A hatch: one or more families of parallel lines. */
export interface Hatch {
  /** Angles as seen on the paper, counter-clockwise from level. */
  readonly angles: readonly Degrees[];
  readonly pitch: Mm;
  /** CSS class beside `hatch`: `plain`, `dashed` or `dotted`. */
  readonly dash: "plain" | "dashed" | "dotted";
}

/**
 * Real lines clipped to a region of the paper, because browsers print SVG patterns as pictures.
 * The lines of all regions with one hatch lie on one lattice. Boxes in `keepClear` stay white.
 */
export function hatchLines(
  region: readonly Polygon[],
  hatch: Hatch,
  keepClear: readonly Box[] = [],
): [Point, Point][] {
  if (region.length === 0) return [];
  const lattice = hatch.angles.flatMap((angle) => parallels(region, angle, hatch.pitch));
  const inside = clipLines(lattice, toPaths(region), ClipType.Intersection);
  return breakLines(inside, keepClear);
}

/** Lines with gaps where the boxes are. */
export function breakLines(
  lines: readonly [Point, Point][],
  boxes: readonly Box[],
): [Point, Point][] {
  if (boxes.length === 0) return [...lines];
  return clipLines(lines, boxes.map(boxPath), ClipType.Difference);
}

/** Parallels across the box round a region, at whole multiples of the pitch from the paper's corner. */
function parallels(region: readonly Polygon[], angle: Degrees, pitch: Mm): [Point, Point][] {
  const radians = (-angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  const turned = region.flat().map(([x, y]): Point => [x * cos + y * sin, y * cos - x * sin]);
  const box = boxOfPoints(turned);
  const lines: [Point, Point][] = [];
  for (let row = Math.ceil(box.top / pitch); row * pitch < box.bottom; row += 1) {
    const back = (u: number): Point => [u * cos - row * pitch * sin, u * sin + row * pitch * cos];
    lines.push([back(box.left - 1), back(box.right + 1)]);
  }
  return lines;
}

function clipLines(
  lines: readonly [Point, Point][],
  clip: PathsD,
  how: ClipType,
): [Point, Point][] {
  const clipper = new ClipperD(4);
  clipper.addOpenSubjectPaths(lines.map((line) => line.map(([x, y]) => ({ x, y }))));
  clipper.addClipPaths(clip);
  const open: PathsD = [];
  clipper.execute(how, FillRule.NonZero, [], open);
  return open
    .map((path): [Point, Point] => {
      const [a = { x: 0, y: 0 }, b = a] = [path[0], path[path.length - 1]];
      return [
        [a.x, a.y],
        [b.x, b.y],
      ];
    })
    .filter(([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1]) > 0.2)
    .sort(byPlace);
}

/** The clipper's order follows its own sweep; ours follows the page, so that goldens stay put. */
function byPlace([a]: [Point, Point], [b]: [Point, Point]): number {
  return a[1] - b[1] || a[0] - b[0];
}

function toPaths(region: readonly Polygon[]): PathsD {
  return region.map((polygon) => polygon.map(([x, y]) => ({ x, y })));
}

function boxPath({ left, top, right, bottom }: Box): PathD {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}
