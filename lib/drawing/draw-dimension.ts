import type { Mm, Point, Ratio } from "../plane/types.ts";
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
  /** Turn the figure to read upwards on an upright line, where lanes are close. */
  readonly isTurned?: boolean;
  /** How far past the end a figure must start that has no room between the arrows. */
  readonly beyond?: Mm;
  /** Where along the line the figure stands, 0.5 for the middle. */
  readonly share?: Ratio;
}

/** Gap between thing and extension line, and how far that runs past the dimension line. @source ISO 129-1 */
const GAP: Mm = 1;
const PAST: Mm = 1.2;
const ARROW: Mm = 2.6;
/** White on either side of the figure in its line. */
const AIR: Mm = 1;

/** A dimension line broken for its figure, which reads level unless it is turned. */
export function drawDimension(dimension: Dimension): Ink[] {
  const {
    from,
    to,
    offset,
    text,
    isTurned: wantsTurn = false,
    share = 0.5,
    beyond = 0,
  } = dimension;
  const a = add(from, offset);
  const b = add(to, offset);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along: Point = length > 0 ? [(b[0] - a[0]) / length, (b[1] - a[1]) / length] : [1, 0];
  const width = measureText(text, "label");
  const { size } = textStyles.label;
  const isTurned = wantsTurn && Math.abs(along[0]) < 1e-6;
  const [wide, high] = isTurned ? [size * 0.9, width] : [width, size * 0.9];
  // Half of the line's own length that the figure's box and its air take up.
  const half = Math.min(
    (wide / 2 + AIR) / Math.max(Math.abs(along[0]), 1e-6),
    (high / 2 + AIR) / Math.max(Math.abs(along[1]), 1e-6),
  );
  const away = Math.hypot(offset[0], offset[1]);
  const out: Point = away > 0 ? [offset[0] / away, offset[1] / away] : [0, 1];
  const inks: Ink[] = [extension(from, a, out), extension(to, b, out)];
  // Does the figure fit between the arrows?
  if (length >= 2 * half + 2 * (ARROW + 0.8)) {
    const room = half + ARROW + 0.8;
    const middle = step(a, along, Math.min(Math.max(length * share, room), length - room));
    inks.push(line([a, step(middle, along, -half)], [step(middle, along, half), b]));
    inks.push(arrowHead(a, b), arrowHead(b, a));
    inks.push({
      kind: "text",
      style: "label",
      text,
      at: middle,
      anchor: "middle",
      isUpright: isTurned,
    });
    return inks;
  }
  // Too short: arrows from outside, the figure beyond the second point.
  const tail = Math.max(ARROW + 1.5, beyond);
  inks.push(line([step(a, along, -tail), step(b, along, tail)]));
  inks.push(arrowHead(a, step(a, along, -1)), arrowHead(b, step(b, along, 1)));
  inks.push(figureBeyond(b, along, { text, tail, width, out, isTurned }));
  return inks;
}

function figureBeyond(
  b: Point,
  along: Point,
  how: { text: string; tail: Mm; width: Mm; out: Point; isTurned: boolean },
): Ink {
  const { text, tail, width, out, isTurned } = how;
  const base = { kind: "text", style: "label", text, isUpright: isTurned } as const;
  if (isTurned) return { ...base, at: step(b, along, tail + AIR + width / 2), anchor: "middle" };
  // Level enough: carry on along the line. Steep: stand beside it, on the outside.
  if (Math.abs(along[0]) > 0.7) {
    const side = along[0] > 0 ? 1 : -1;
    return { ...base, at: step(b, along, tail + AIR), anchor: side > 0 ? "start" : "end" };
  }
  const side = out[0] >= 0 ? 1 : -1;
  const at: Point = [b[0] + side * (width / 2 + AIR + 0.5), b[1] + along[1] * (tail - 1)];
  return { ...base, at, anchor: "middle" };
}

/** Whether a figure stands between the arrows of a line of this length. */
export function fitsBetween(length: Mm, text: string): boolean {
  return length >= measureText(text, "label") + 2 * (AIR + ARROW + 0.8);
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
