import type { Count, Degrees, Mm, Polygon } from "../plane/types.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { placeForms } from "./place-forms.ts";
import type { StripForm, StripItem, StripJob } from "./strip-types.ts";

/** A kind of piece for a strip: its outline, how many, and the ways it may lie. */
export interface StripKind {
  readonly outline: Polygon;
  readonly copies: Count;
  readonly turns: readonly Degrees[];
  readonly flips: readonly boolean[];
  readonly stepX: Mm;
  readonly stepY: Mm;
  readonly startX?: Mm;
  readonly startY?: Mm;
}

/** A strip job from kinds of pieces: the copies of one kind follow one another and share forms. */
export function makeStripJob(
  width: Mm,
  kinds: readonly StripKind[],
  walls: readonly Mm[] = [],
): StripJob {
  const forms: StripForm[] = [];
  const items: StripItem[] = [];
  const known = new Map<string, StripItem>();
  for (const kind of kinds) {
    const { copies, ...alike } = kind;
    // Kinds listed twice are one kind: they share forms and no-fit regions.
    const name = JSON.stringify(alike);
    const item = known.get(name) ?? makeItem(kind, width, forms);
    known.set(name, item);
    for (let copy = 0; copy < copies; copy++) items.push(item);
  }
  return { width, forms, items, walls };
}

/** One item of a kind; its forms join the list. */
function makeItem(
  { outline, turns, flips, stepX, stepY, startX = 0, startY = 0 }: StripKind,
  width: Mm,
  forms: StripForm[],
): StripItem {
  const all = placeForms(outline, turns, flips);
  // A form too wide for the strip would hang off it; where all are, they are left for the caller.
  const narrow = all.filter((form) => form.width + (stepX > 0 ? startX : 0) <= width + 1e-6);
  const own = narrow.length > 0 ? narrow : all;
  const first = forms.length;
  forms.push(...own);
  const area = Math.abs(polygonArea(outline));
  return { forms: own.map((_, i) => first + i), area, stepX, stepY, startX, startY };
}
