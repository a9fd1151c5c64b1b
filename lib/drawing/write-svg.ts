import { curveLinearClosed, line } from "d3-shape";
import type { Point } from "../plane/types.ts";
import { escapeXml } from "./escape-xml.ts";
import { CAP_HEIGHT, textStyles } from "./measure-text.ts";
import { paperNumber } from "./paper-number.ts";
import { arcSweep } from "./paper-path.ts";
import { textRuns } from "./text-runs.ts";
import type { Ink, PaperPath, PathInk, TextInk } from "./types.ts";

/** What an `<svg>` says about itself. */
export interface SvgHead {
  readonly id: string;
  readonly title: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly className?: string;
}

/** Write ink as a whole `<svg>` in millimetres. Ids start with the figure's own. */
export function writeSvg(head: SvgHead, inks: readonly Ink[]): string {
  const { title, alt, className = "figure" } = head;
  const [width, height] = [paperNumber(head.width), paperNumber(head.height)];
  const key = figureKey(head.id);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" id="${key}" class="${className}" width="${width}mm" ` +
    `height="${height}mm" viewBox="0 0 ${width} ${height}" role="img" ` +
    `aria-labelledby="${key}-title" aria-describedby="${key}-desc">` +
    `<title id="${key}-title">${escapeXml(title)}</title>` +
    `<desc id="${key}-desc">${escapeXml(alt)}</desc>${writeInks(inks)}</svg>`
  );
}

/** The id of a figure's `<svg>`: `panel/P1` becomes `figure-panel-P1`. */
export function figureKey(id: string): string {
  return `figure-${id.replace(/[^A-Za-z0-9_-]+/g, "-")}`;
}

/** Write ink without the frame, for use inside a group. */
export function writeInks(inks: readonly Ink[]): string {
  return inks.map((ink) => (ink.kind === "path" ? writePath(ink) : writeText(ink))).join("");
}

function writePath({ className, paths }: PathInk): string {
  if (paths.length === 0) return "";
  return `<path class="${className}" d="${paths.map(pathData).join("")}"/>`;
}

const straightPath = line<Point>().digits(2);
const straightLoop = line<Point>().curve(curveLinearClosed).digits(2);

/** Straight paths by d3-shape; it has no arcs between given ends, so those are written here. */
function pathData(path: PaperPath): string {
  const { from, segments, isClosed } = path;
  if (!segments.every(({ kind }) => kind === "line")) return curvedData(path);
  const corners = [from, ...segments.map(({ to }) => to)];
  return (isClosed ? straightLoop(corners) : straightPath(corners)) ?? "";
}

function curvedData({ from, segments, isClosed }: PaperPath): string {
  let at = from;
  let data = `M${pair(from)}`;
  for (const segment of segments) {
    if (segment.kind === "line") data += `L${pair(segment.to)}`;
    else {
      const sweep = arcSweep(at, segment);
      const radius = paperNumber(segment.radius);
      const isLarge = Math.abs(sweep) > Math.PI ? 1 : 0;
      data += `A${radius} ${radius} 0 ${isLarge} ${sweep > 0 ? 1 : 0} ${pair(segment.to)}`;
    }
    at = segment.to;
  }
  return isClosed ? `${data}Z` : data;
}

function pair([x, y]: Point): string {
  return `${paperNumber(x)} ${paperNumber(y)}`;
}

function writeText(ink: TextInk): string {
  const [x, y] = ink.at;
  const drop = (textStyles[ink.style].size * CAP_HEIGHT) / 2;
  const turn = ink.isUpright ? ` transform="rotate(-90 ${pair(ink.at)})"` : "";
  const runs = textRuns(ink.text).map(({ text, isFraction }) =>
    isFraction ? `<tspan class="frac">${escapeXml(text)}</tspan>` : escapeXml(text),
  );
  const place = `x="${paperNumber(x)}" y="${paperNumber(y + drop)}"`;
  return `<text class="${ink.style} ${ink.anchor}${ink.hasHalo ? " halo" : ""}" ${place}${turn}>${runs.join("")}</text>`;
}
