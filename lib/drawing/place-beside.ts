import type { Mm, Point, Ratio } from "../plane/types.ts";
import { LINE_SPACING, measureText, textStyles } from "./measure-text.ts";
import { labelInks } from "./place-labels.ts";
import type { Box, Ink, TextStyle } from "./types.ts";

/** A thing to be named from the margin: the text and the point the leader ends at. */
export interface Callout {
  readonly lines: readonly string[];
  readonly style: TextStyle;
  readonly to: Point;
  /** Other points of the same thing that a leader may end at. */
  readonly spots?: readonly Point[];
}

type Side = "left" | "right";
interface Slot extends Callout {
  readonly height: Mm;
  y: Mm;
}

/** White between labels of one column. */
const BETWEEN: Mm = 1.8;

/**
 * Name things from columns to the left and right of a drawing. Labels keep the order of their
 * targets down the page and are pushed apart, so they can never overlap; leaders that still cross
 * change places.
 */
export function placeBeside(
  callouts: readonly Callout[],
  box: Box,
  {
    gap = 6,
    lean = 0.5,
    shift = 0,
  }: { readonly gap?: Mm; readonly lean?: Ratio; readonly shift?: Mm } = {},
): Ink[] {
  // What lies beyond this goes to the right: half way across, unless the columns lean to one side.
  const middle = box.left + (box.right - box.left) * lean;
  const left = callouts.filter(({ to }) => to[0] < middle);
  const right = callouts.filter(({ to }) => to[0] >= middle);
  if (lean === 0.5) levelOff(left, right, middle);
  const how = { box, gap, shift };
  return [...column(left, "left", how), ...column(right, "right", how)];
}

/** Move the labels nearest the middle across while one column is much the longer. */
function levelOff(left: Callout[], right: Callout[], middle: Mm): void {
  const [long, short] = left.length > right.length ? [left, right] : [right, left];
  while (long.length > short.length + 2) {
    long.sort((a, b) => Math.abs(a.to[0] - middle) - Math.abs(b.to[0] - middle));
    const moved = long.shift();
    if (moved) short.push(moved);
  }
}

function column(
  callouts: readonly Callout[],
  side: Side,
  { box, gap, shift }: { readonly box: Box; readonly gap: Mm; readonly shift: Mm },
): Ink[] {
  const slots: Slot[] = callouts
    .map((callout) => ({ ...callout, height: heightOf(callout), y: callout.to[1] }))
    .sort((a, b) => a.to[1] - b.to[1] || a.to[0] - b.to[0]);
  spread(slots, (box.top + box.bottom) / 2);
  for (const slot of slots) slot.y += shift;
  const x = side === "left" ? box.left - gap : box.right + gap;
  uncross(slots, x);
  const anchor = side === "left" ? "end" : "start";
  return slots.flatMap((slot) =>
    labelInks({ ...slot, candidates: [] }, { at: [x, slot.y], anchor, leader: slot.to }),
  );
}

function heightOf({ lines, style }: Callout): Mm {
  return lines.length * textStyles[style].size * LINE_SPACING;
}

/** Push labels apart about their targets: groups that touch share their mean shift. */
function spread(slots: Slot[], middle: Mm): void {
  for (const slot of slots) slot.y = slot.to[1] * 0.9 + middle * 0.1;
  let groups = slots.map((slot) => ({
    slots: [slot],
    want: slot.y,
    height: slot.height + BETWEEN,
  }));
  for (let i = 0; i + 1 < groups.length;) {
    const [a, b] = [groups[i], groups[i + 1]];
    if (!a || !b || a.want + a.height / 2 <= b.want - b.height / 2) {
      i += 1;
      continue;
    }
    const count = a.slots.length + b.slots.length;
    const want = (a.want * a.slots.length + b.want * b.slots.length) / count;
    const joined = { slots: [...a.slots, ...b.slots], want, height: a.height + b.height };
    groups = [...groups.slice(0, i), joined, ...groups.slice(i + 2)];
    i = Math.max(0, i - 1);
  }
  for (const group of groups) {
    let top = group.want - group.height / 2;
    for (const slot of group.slots) {
      slot.y = top + (slot.height + BETWEEN) / 2;
      top += slot.height + BETWEEN;
    }
  }
}

/** Swap labels of equal height whose leaders cross; every swap shortens the leaders, so it ends. */
function uncross(slots: Slot[], x: Mm): void {
  let isCalm = false;
  for (let pass = 0; pass < slots.length && !isCalm; pass += 1) {
    isCalm = true;
    for (let i = 0; i + 1 < slots.length; i += 1) {
      const [a, b] = [slots[i], slots[i + 1]];
      if (!a || !b || a.height !== b.height) continue;
      const asIs = reach(x, a.y, a.to) + reach(x, b.y, b.to);
      const swapped = reach(x, b.y, a.to) + reach(x, a.y, b.to);
      if (swapped >= asIs - 1e-9) continue;
      [a.y, b.y] = [b.y, a.y];
      [slots[i], slots[i + 1]] = [b, a];
      isCalm = false;
    }
  }
}

function reach(x: Mm, y: Mm, to: Point): Mm {
  return Math.hypot(to[0] - x, to[1] - y);
}

/** Widest label of a set, for keeping room. */
export function calloutWidth(callouts: readonly Callout[]): Mm {
  const widths = callouts.flatMap(({ lines, style }) =>
    lines.map((text) => measureText(text, style)),
  );
  return widths.reduce((a, b) => Math.max(a, b), 0);
}
