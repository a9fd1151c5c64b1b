import type { CutPlace, UsedStock } from "../packing/types.ts";
import type { Count, Mm, Point, Polygon } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import { formatSizes } from "../units/index.ts";
import { growBox } from "./boxes.ts";
import { type CutView, viewRectangle } from "./draw-cuts.ts";
import { drawHatch } from "./draw-hatch.ts";
import { stockHatch } from "./hatch-styles.ts";
import { insidePoints } from "./inside-point.ts";
import { pathOf } from "./paper-path.ts";
import type { Callout } from "./place-beside.ts";
import { partWords } from "./part-words.ts";
import { placeLabels } from "./place-labels.ts";
import { textBox } from "./text-box.ts";
import type { Ink, Label } from "./types.ts";

export interface StockParts {
  /** Hatches and outlines. */
  readonly under: readonly Ink[];
  /** Names on the parts. */
  readonly over: readonly Ink[];
  /** Names of what is too small to write on, like ones told once with their number. */
  readonly small: readonly Callout[];
  readonly collisions: readonly string[];
}

type WriteSizes = (size: readonly Mm[]) => string;

interface Region {
  readonly rings: readonly Polygon[];
  readonly lines: readonly string[];
  /** The same without copy numbers. */
  readonly short: readonly string[];
  readonly isPart: boolean;
}

/** Parts hatched and named, offcuts white and named, in one view of a stock. */
export function drawStockParts(
  project: Project,
  used: UsedStock,
  how: {
    readonly view: CutView;
    readonly others: readonly Ink[];
    readonly sizes?: Count;
    /** Names alone: the words beside the figure have the sizes. */
    readonly isBrief?: boolean;
  },
): StockParts {
  const { view, others, sizes = 3, isBrief = false } = how;
  const write = (size: readonly Mm[]) => formatSizes(size.slice(0, sizes), project);
  const parts = partRegions(used, view, write);
  const regions = isBrief
    ? parts.map((region) => ({ ...region, ...briefWords(region) }))
    : [...parts, ...offcutRegions(used, view, write)];
  const outlines = regions
    .filter(({ isPart }) => isPart)
    .map(({ rings }): Ink => ({
      kind: "path",
      className: "line part",
      paths: rings.map((ring) => pathOf(ring, true)),
      isObstacle: true,
    }));
  const obstacles = [...others, ...outlines];
  const labels: Label[] = [];
  const callouts: Callout[] = [];
  for (const region of regions) {
    const label = fittingLabel(region, obstacles);
    const [to, ...spots] = insidePoints(region.rings, 200);
    if (label) labels.push(label);
    else if (to) callouts.push({ lines: [region.short.join(", ")], style: "label", to, spots });
  }
  const placed = placeLabels(labels, obstacles);
  const clear = [...placed.inks, ...others].flatMap((ink) =>
    ink.kind === "text" ? [growBox(textBox(ink), 0.8)] : [],
  );
  const hatches = regions
    .filter(({ isPart }) => isPart)
    .map(({ rings }) => drawHatch(rings, stockHatch, clear));
  return {
    under: [...hatches, ...outlines],
    over: placed.inks,
    small: countAlike(callouts),
    collisions: placed.collisions,
  };
}

/** All but the size, which comes last. */
const briefWords = ({ lines, short }: Region): Pick<Region, "lines" | "short"> => ({
  lines: lines.slice(0, -1),
  short: short.slice(0, -1),
});

function countAlike(callouts: readonly Callout[]): Callout[] {
  const counted = new Map<string, { callout: Callout; count: number }>();
  for (const callout of callouts) {
    const key = callout.lines.join(" ");
    const known = counted.get(key);
    if (known) known.count += 1;
    else counted.set(key, { callout, count: 1 });
  }
  return [...counted].map(([text, { callout, count }]) =>
    count === 1 ? callout : { ...callout, lines: [`${count} of ${text}`] },
  );
}

/** The fullest wording that stands on the region clear of lines, or null. */
function fittingLabel({ rings, lines, short }: Region, obstacles: readonly Ink[]): Label | null {
  const candidates = insidePoints(rings, 120).map(
    (at) => ({ at, anchor: "middle", leader: null }) as const,
  );
  const wordings = [lines, [lines.join(", ")], short, [short.join(", ")]];
  for (const wording of wordings) {
    const label: Label = { lines: wording, style: "label", candidates };
    if (candidates.length > 0 && placeLabels([label], obstacles).collisions.length === 0)
      return label;
  }
  return null;
}

/** Parts by where they show: those that lie over one another share a region. */
function partRegions(used: UsedStock, view: CutView, write: WriteSizes): Region[] {
  const groups = new Map<string, CutPlace[]>();
  for (const place of used.places) {
    const key = viewRectangle(place.at, place.size, view)
      .map(([x, y]) => `${Math.round(x * 10)},${Math.round(y * 10)}`)
      .join(" ");
    groups.set(key, [...(groups.get(key) ?? []), place]);
  }
  return [...groups.values()].flatMap((places) => {
    const [first] = places;
    if (!first) return [];
    const rectangle = viewRectangle(first.at, first.size, view);
    const free = view.up === 1 ? first.outline : null;
    const holes = view.up === 1 ? (first.holes ?? []) : [];
    const rings = [
      free ? free.map((corner) => view.toPaper(corner)) : rectangle,
      ...holes.map((hole) => hole.map((corner) => view.toPaper(corner))),
    ];
    const names = [...new Set(places.map(partName))];
    const depth = places.length > 1 && names.length === 1 ? [`${places.length} deep`] : [];
    const size = write(first.size);
    const short = [placeWords(first), size];
    return [{ rings, lines: [...names, ...depth, size], short, isPart: true }];
  });
}

/** A part, and the twin that one cut aslant gives from the same blank. */
const placeWords = ({ part, twin }: CutPlace): string =>
  twin === undefined
    ? partWords(part)
    : twin === part
      ? `two of ${partWords(part)}`
      : `${partWords(part)} and ${partWords(twin)}`;

function partName(place: CutPlace): string {
  const [layer, layers] = place.layer;
  const { copy } = place;
  const name = `${placeWords(place)}${place.twin === undefined ? "" : ", cut aslant"}`;
  if (layers > 1) return `${name}, ${layer} of ${layers}`;
  return copy > 1 ? `${name} (${copy})` : name;
}

function offcutRegions(used: UsedStock, view: CutView, write: WriteSizes): Region[] {
  const regions = used.offcuts.map(({ at, size, use }): Region => {
    const words = use ? [`offcut, for ${use}`] : ["offcut"];
    return {
      rings: [viewRectangle(at, size, view)],
      lines: [...words, write(size)],
      short: ["offcut", write(size)],
      isPart: false,
    };
  });
  const parts = used.places.map(({ at, size }) => viewRectangle(at, size, view));
  // An offcut that lies over or under a part in this view is shown by the other view.
  return regions.filter(({ rings: [ring = []] }) => !parts.some((part) => isWithin(ring, part)));
}

function isWithin(ring: Polygon, part: Polygon): boolean {
  const [a, b] = [centre(ring), part];
  const xs = b.map(([x]) => x);
  const ys = b.map(([, y]) => y);
  return (
    a[0] > Math.min(...xs) &&
    a[0] < Math.max(...xs) &&
    a[1] > Math.min(...ys) &&
    a[1] < Math.max(...ys)
  );
}

function centre(ring: Polygon): Point {
  const sum = ring.reduce(([x, y], [px, py]) => [x + px, y + py], [0, 0]);
  return [(sum[0] ?? 0) / Math.max(1, ring.length), (sum[1] ?? 0) / Math.max(1, ring.length)];
}
