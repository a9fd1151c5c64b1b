import { growPolygon } from "../plane/grow-polygon.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { turnPoint } from "./turn-point.ts";
import type { Count, Degrees, Mm, Mm2, Point, Polygon } from "../plane/types.ts";
import { boundsOf } from "./list-cuts.ts";
import type { CutOptions } from "./make-plans.ts";
import { type Waiting, fillHoles } from "./fill-holes.ts";
import { packStrip } from "./pack-strip.ts";
import { outlineOf } from "./part-outline.ts";
import { makeForm } from "./place-forms.ts";
import type { SheetSize } from "./plan-sheets.ts";
import { type StripKind, makeStripJob } from "./strip-job.ts";
import type { Cut, CutPlace, Offcut, Part, UsedStock } from "./types.ts";

/** Sheets with parts cut out of them freely, size by size; null when some part fits no sheet left. */
export type NestedSheets = readonly (readonly UsedStock[])[];

/** Where a part lies on a sheet. */
interface Nested extends Waiting {
  readonly sheet: Count;
  /** The part itself, and before it what lies in its holes; with the box of each cut in order. */
  readonly placed: PlacedPart;
}

interface PlacedPart {
  readonly places: readonly CutPlace[];
  readonly cuts: readonly Cut["of"][];
}

/**
 * Nest the true outlines of parts on sheets, a kerf apart, turned only as the grain allows. Sheets on
 * hand are filled first, in order; the rest goes on the first sold size that holds it. Holes are
 * filled before that with parts that go in.
 *
 * Each size is a strip with a wall at the end of every sheet, laid like cloth.
 */
export function nestSheets(
  parts: readonly Part[],
  sheets: readonly SheetSize[],
  options: CutOptions = {},
): NestedSheets | null {
  const used: UsedStock[][] = sheets.map(() => []);
  const copies = parts.flatMap((part) =>
    Array.from({ length: part.copies }, (_, copy) => ({ part, copy: copy + 1, guests: [] })),
  );
  const kerf = Math.max(...sheets.map((sheet) => sheet.kerf));
  let waiting = fillHoles(copies, kerf, (part, host) => turnsBeside(part, host, sheets[0]!));
  const rounds = [
    ...sheets.map((sheet, index) => ({ sheet, index, most: sheet.have })),
    ...sheets
      .map((sheet, index) => ({ sheet, index, most: Infinity }))
      .filter(({ sheet }) => sheet.isSold !== false),
  ];
  for (const { sheet, index, most } of rounds) {
    const fitting = waiting.filter(({ part }) => fittingTurns(part, sheet).length > 0);
    if (most === 0 || fitting.length === 0) continue;
    const nested = nestOne(fitting, sheet).filter((each) => each.sheet < most);
    const done = new Set(nested.map(({ part, copy }) => `${part.id} ${copy}`));
    waiting = waiting.filter(({ part, copy }) => !done.has(`${part.id} ${copy}`));
    used[index]!.push(...listSheets(nested, sheet, options));
  }
  return waiting.length > 0 ? null : used;
}

/** Turns on the sheet: the first size of a part lies along the grain. */
function turnsFor(part: Part, { grain }: SheetSize): readonly Degrees[] {
  switch (grain) {
    case "along":
      return [0, 180];
    case "across":
      return [90, 270];
    case "none":
      return part.canTurn ? [0, 90, 180, 270] : [0, 180];
  }
}

/** Turns beside a part in whose hole it lies, whichever way that lies on the sheet itself. */
function turnsBeside(part: Part, host: Part, { grain }: SheetSize): readonly Degrees[] {
  if (grain !== "none") return [0, 180];
  if (part.canTurn) return [0, 90, 180, 270];
  return host.canTurn ? [] : [0, 180];
}

/** The strip runs along the sheet: what is turned by t on the sheet is turned by t + 90° on it. */
const onStrip = (turn: Degrees): Degrees => (turn + 90) % 360;

/** The turns, on the strip, in which a part fits the sheet. */
function fittingTurns(part: Part, sheet: SheetSize): readonly Degrees[] {
  const grown = growPolygon(outlineOf(part), sheet.kerf / 2);
  const [length, width] = sheet.size.map((each) => each + sheet.kerf + 1e-6) as [Mm, Mm];
  return turnsFor(part, sheet)
    .map(onStrip)
    .filter((turn) => {
      const form = makeForm(grown, turn, false);
      return form.width <= width && form.height <= length;
    });
}

function nestOne(waiting: readonly Waiting[], sheet: SheetSize): readonly Nested[] {
  const { kerf } = sheet;
  const [length, width] = [sheet.size[0] + kerf, sheet.size[1] + kerf];
  const parts = [...new Set(waiting.map(({ part }) => part))];
  const ordered = parts.flatMap((each) => waiting.filter(({ part }) => part === each));
  const kinds = parts.map((part): StripKind => ({
    outline: growPolygon(outlineOf(part), kerf / 2),
    copies: waiting.filter((each) => each.part === part).length,
    turns: fittingTurns(part, sheet),
    flips: [false],
    stepX: 0,
    stepY: 0,
  }));
  const walls = waiting.map((_, i) => (i + 1) * length);
  const job = makeStripJob(width, kinds, walls);
  const { places } = packStrip(job, "quick");
  return places.map(({ form, x, y }, i): Nested => {
    const { part } = ordered[i]!;
    const number = Math.floor((y + 1e-6) / length);
    const shape = job.forms[form]!;
    const grown = growPolygon(outlineOf(part), kerf / 2);
    const { min } = pointBounds(grown.map((point) => turnPoint(point, shape.turn)));
    // From the strip to the sheet: a quarter turn to the right, the kerf round the sheet taken off.
    const lie = (ring: Polygon): Polygon =>
      ring.map((point): Point => {
        const [px, py] = turnPoint(point, shape.turn);
        const [sx, sy] = [px - min[0] + x, py - min[1] + y - number * length];
        return [sy - kerf / 2, width - sx - kerf / 2];
      });
    return { ...ordered[i]!, sheet: number, placed: layPart(ordered[i]!, lie) };
  });
}

/** What lies in the holes of a part is cut out first, then the holes, then the part itself. */
function layPart({ part, copy, guests }: Waiting, lie: (ring: Polygon) => Polygon): PlacedPart {
  const within = guests.map((guest) => layPart(guest, (ring) => lie(guest.lie(ring))));
  const outline = lie(outlineOf(part)).map(([x, y]): Point => [tidy(x), tidy(y)]);
  const holes = part.holes?.map((hole) => lie(hole).map(([x, y]): Point => [tidy(x), tidy(y)]));
  const own: CutPlace = {
    part: part.id,
    copy,
    ...boundsOf(outline),
    layer: [1, 1],
    outline,
    ...(holes === undefined ? {} : { holes }),
  };
  const inHole = (place: CutPlace): CutPlace => ({ inHoleOf: part.id, ...place });
  return {
    places: [...within.flatMap(({ places }) => places.map(inHole)), own],
    cuts: [...within.flatMap(({ cuts }) => cuts), ...[...(holes ?? []), outline].map(boundsOf)],
  };
}

/** Without the last digits that turning leaves behind. */
const tidy = (value: Mm): Mm => Math.round(value * 1e6) / 1e6 + 0;

/** Sheets one by one, parts in order from the left end, the uncut end of each as an offcut. */
function listSheets(
  nested: readonly Nested[],
  { size, kerf }: SheetSize,
  { leastOffcut = 20 }: CutOptions,
): readonly UsedStock[] {
  const numbers = [...new Set(nested.map(({ sheet }) => sheet))].sort((a, b) => a - b);
  return numbers.map((number, stockIndex): UsedStock => {
    const placed = nested
      .filter(({ sheet }) => sheet === number)
      .map((each) => each.placed)
      .sort(fromLeft);
    const places = placed.flatMap((each) => each.places);
    const cuts = placed.flatMap((each) => each.cuts);
    const end = Math.max(...places.map(({ at, size: own }) => at[0]! + own[0]!)) + kerf;
    const left = size[0] - end;
    const offcuts: readonly Offcut[] =
      left >= leastOffcut ? [{ at: [end, 0], size: [left, size[1]], use: null }] : [];
    return {
      stockIndex,
      size,
      places,
      cuts: cuts.map((of, i): Cut => ({ order: i + 1, kind: "free", axis: 0, at: of.at[0]!, of })),
      offcuts,
    };
  });
}

/** By the left end, then the near edge, of the part that has the others in its holes. */
function fromLeft(one: PlacedPart, two: PlacedPart): number {
  const [a, b] = [one.places.at(-1)!.at, two.places.at(-1)!.at];
  return a[0]! - b[0]! || a[1]! - b[1]!;
}

/** Area of all parts without their holes: what sheets must hold at least, however they are cut. */
export const nestedArea = (parts: readonly Part[]): Mm2 =>
  parts.reduce((sum, part) => {
    const holes = (part.holes ?? []).reduce((all, hole) => all + Math.abs(polygonArea(hole)), 0);
    return sum + part.copies * (Math.abs(polygonArea(outlineOf(part))) - holes);
  }, 0);
