import type { Mm, Point } from "../plane/types.ts";
import { arrowHead } from "./mark-arrow.ts";
import { measureText, textStyles } from "./measure-text.ts";
import { pathOf } from "./paper-path.ts";
import type { Ink, PathInk } from "./types.ts";

/** A measured stretch on the paper: from one point to another, its line shifted by `offset`. */
export interface Dimension {
  readonly from: Point;
  readonly to: Point;
  /** From the measured points to the dimension line, on the paper. */
  readonly offset: Point;
  readonly text: string;
}

/** Gap between thing and extension line, and how far that runs past the dimension line. @source ISO 129-1 */
const GAP: Mm = 1;
const PAST: Mm = 1.2;
const ARROW: Mm = 2.6;
/** White on either side of the figure in its line. */
const AIR: Mm = 1;

/** A dimension line broken for its figure, which always reads level. */
export function drawDimension({ from, to, offset, text }: Dimension): Ink[] {
  const a = add(from, offset);
  const b = add(to, offset);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along: Point = length > 0 ? [(b[0] - a[0]) / length, (b[1] - a[1]) / length] : [1, 0];
  const width = measureText(text, "label");
  const { size } = textStyles.label;
  // Half of the line's own length that the figure's box and its air take up.
  const half = Math.min(
    (width / 2 + AIR) / Math.max(Math.abs(along[0]), 1e-6),
    ((size * 0.75) / 2 + AIR) / Math.max(Math.abs(along[1]), 1e-6),
  );
  const away = Math.hypot(offset[0], offset[1]);
  const out: Point = away > 0 ? [offset[0] / away, offset[1] / away] : [0, 1];
  const inks: Ink[] = [extension(from, a, out), extension(to, b, out)];
  // Does the figure fit between the arrows?
  if (length >= 2 * half + 2 * (ARROW + 0.8)) {
    const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    inks.push(line([a, step(middle, along, -half)], [step(middle, along, half), b]));
    inks.push(arrowHead(a, b), arrowHead(b, a));
    inks.push({ kind: "text", style: "label", text, at: middle, anchor: "middle", isUpright: false });
    return inks;
  }
  // Too short: arrows from outside, the figure beyond the second point.
  const tail = ARROW + 1.5;
  inks.push(line([step(a, along, -tail), step(b, along, tail)]));
  inks.push(arrowHead(a, step(a, along, -1)), arrowHead(b, step(b, along, 1)));
  inks.push(figureBeyond(b, along, { text, tail, width, out }));
  return inks;
}

function figureBeyond(
  b: Point,
  along: Point,
  { text, tail, width, out }: { text: string; tail: Mm; width: Mm; out: Point },
): Ink {
  const base = { kind: "text", style: "label", text, isUpright: false } as const;
  // Level enough: carry on along the line. Steep: stand beside it, on the outside.
  if (Math.abs(along[0]) > 0.7) {
    const side = along[0] > 0 ? 1 : -1;
    return { ...base, at: step(b, along, tail + AIR), anchor: side > 0 ? "start" : "end" };
  }
  const side = out[0] >= 0 ? 1 : -1;
  const at: Point = [b[0] + side * (width / 2 + AIR + 0.5), b[1] + along[1] * (tail - 1)];
  return { ...base, at, anchor: "middle" };
}

function extension(thing: Point, end: Point, out: Point): PathInk {
  const reach = Math.hypot(end[0] - thing[0], end[1] - thing[1]);
  const paths = reach > GAP ? [pathOf([step(thing, out, GAP), step(end, out, PAST)])] : [];
  return { kind: "path", className: "line measure thin", paths, isObstacle: true };
}

function line(...stretches: readonly (readonly Point[])[]): PathInk {
  return {
    kind: "path",
    className: "line measure",
    paths: stretches.map((points) => pathOf(points)),
    isObstacle: true,
  };
}

function add(a: Point, b: Point): Point {
  return [a[0] + b[0], a[1] + b[1]];
}

function step(from: Point, along: Point, by: Mm): Point {
  return [from[0] + along[0] * by, from[1] + along[1] * by];
}
