import { arcRadius, arcSweep } from "../plane/segments.ts";
import type { Loop, Mm, Point, Segment } from "../plane/types.ts";
import type { Paper } from "./paper.ts";
import { sheetMargin, strips } from "./tile-piece.ts";

/** Takes a point of a piece (y up) to the sheet (y down from its top left corner). */
export type OnSheet = (point: Point) => Point;

/** The two checks that stand on every sheet, along it and up it: 100 mm, and 4 in. */
export const checkLengths = [
  { length: 100, label: "100 mm" },
  { length: 101.6, label: "4 in" },
] as const;

const tick: Mm = 3;

/** Open the drawing of a whole sheet, full size. */
export const sheetSvg = (
  { width, height }: Paper,
  label: string,
  marks: readonly string[],
): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" class="figure-sheet" width="${width}mm" height="${height}mm"` +
  ` viewBox="0 0 ${width} ${height}" role="img" aria-label="${escapeText(label)}">${marks.join("")}</svg>`;

/** Check lines in both directions, in the strips that carry nothing else. */
export function checkMarks({ height }: Paper): string {
  const left = sheetMargin + strips.left;
  const low = height - sheetMargin;
  const along = checkLengths.map(({ length, label }, i) => {
    const y = low - 9 + i * 7;
    return (
      ruler([left, y], [left + length, y]) +
      text([left + length + 3, y + 1.3], `${label}: measure this line`)
    );
  });
  const top = sheetMargin + strips.top;
  const up = checkLengths.map(({ length, label }, i) => {
    const x = sheetMargin + 2 + i * 7;
    return (
      ruler([x, top], [x, top + length]) +
      text([x + 1.3, top + length + 3], label, { isUpright: true })
    );
  });
  return `<g class="check">${[...along, ...up].join("")}</g>`;
}

/** A line with a tick across each end, as one path: its box is as long as the line. */
function ruler([x1, y1]: Point, [x2, y2]: Point): string {
  const half = tick / 2;
  const path =
    y1 === y2
      ? `M${num(x1)} ${num(y1 - half)}v${tick}M${num(x1)} ${num(y1)}H${num(x2)}M${num(x2)} ${num(y2 - half)}v${tick}`
      : `M${num(x1 - half)} ${num(y1)}h${tick}M${num(x1)} ${num(y1)}V${num(y2)}M${num(x2 - half)} ${num(y2)}h${tick}`;
  return `<path class="line measure check-line" d="${path}"/>`;
}

/** A closed outline, arcs as true arcs. */
export const loopPath = (loop: Loop, onSheet: OnSheet): string => {
  const [first] = loop;
  if (first === undefined) return "";
  return `M${at(onSheet(first.from))}${loop.map((segment) => segmentPath(segment, onSheet)).join("")}Z`;
};

function segmentPath(segment: Segment, onSheet: OnSheet): string {
  if (segment.kind === "line") return `L${at(onSheet(segment.to))}`;
  const radius = num(arcRadius(segment));
  const isLarge = Math.abs(arcSweep(segment)) > Math.PI ? 1 : 0;
  // The sheet has y down, so that a clockwise arc is drawn in SVG's positive sense.
  return `A${radius} ${radius} 0 ${isLarge} ${segment.isClockwise ? 1 : 0} ${at(onSheet(segment.to))}`;
}

export const stretch = (from: Point, to: Point, role: string): string =>
  `<path class="line ${role}" d="M${at(from)}L${at(to)}"/>`;

export const path = (d: string, role: string): string => `<path class="line ${role}" d="${d}"/>`;

export function text(
  [x, y]: Point,
  words: string,
  {
    isUpright = false,
    anchor = "start",
    size = 3.6,
  }: {
    readonly isUpright?: boolean;
    readonly anchor?: "start" | "middle" | "end";
    readonly size?: Mm;
  } = {},
): string {
  const turn = isUpright ? ` transform="rotate(90 ${num(x)} ${num(y)})"` : "";
  return `<text x="${num(x)}" y="${num(y)}" font-size="${size}" class="${anchor}"${turn}>${escapeText(words)}</text>`;
}

export const escapeText = (words: string): string =>
  words.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

const at = (point: Point): string => `${num(point[0])} ${num(point[1])}`;

/** Paper millimetres to a thousandth: a full-size line must not gather rounding. */
const num = (value: Mm): string => String(Number(value.toFixed(3)));
