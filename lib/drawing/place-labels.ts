import type { Mm, Point } from "../plane/types.ts";
import { boxesOverlap, growBox, joinBoxes, segmentMeetsBox } from "./boxes.ts";
import { flattenPath, pathOf } from "./paper-path.ts";
import { textBox } from "./text-box.ts";
import { textLines } from "./text-lines.ts";
import type { Box, Candidate, Ink, Label, PathInk, Placed, TextInk } from "./types.ts";

type Stretch = readonly [Point, Point];

/** White kept round every label. */
const CLEAR: Mm = 0.6;
/** More of it between two labels, so that they do not read as one. */
const BETWEEN: Mm = 1;

/**
 * Put each label at the first of its places that is clear of all ink and of the labels before it.
 * Labels with few places go first. One with no clear place is drawn at its first and reported.
 */
export function placeLabels(labels: readonly Label[], ink: readonly Ink[], within?: Box): Placed {
  const { boxes, stretches } = takenBy(ink);
  const placed = new Map<Label, Ink[]>();
  const collisions: string[] = [];
  const order = [...labels].sort((a, b) => a.candidates.length - b.candidates.length);
  for (const label of order) {
    const [first] = label.candidates;
    if (!first) continue;
    const isClear = (place: Candidate) => isFree(label, place, { boxes, stretches, within });
    const found = label.candidates.find(isClear);
    if (!found) collisions.push(`No clear place for "${label.lines.join(" ")}".`);
    const inks = labelInks(label, found ?? first);
    placed.set(label, inks);
    for (const item of inks) if (item.kind === "text") boxes.push(textBox(item));
    stretches.push(...obstacleStretches(inks));
  }
  return { inks: labels.flatMap((label) => placed.get(label) ?? []), collisions };
}

/** Where no label can stand: boxes of text, and stretches of line. */
export interface Taken {
  readonly boxes: Box[];
  readonly stretches: Stretch[];
  /** What a label must keep inside of; nothing unless given. */
  readonly within?: Box | undefined;
}

/** What ink takes up. */
export const takenBy = (ink: readonly Ink[]): Taken => ({
  boxes: ink.filter((item) => item.kind === "text").map(textBox),
  stretches: obstacleStretches(ink),
});

/** The part of what is taken that comes near a box. */
export const takenNear = ({ boxes, stretches }: Taken, near: Box): Taken => ({
  boxes: boxes.filter((box) => boxesOverlap(box, near, BETWEEN)),
  stretches: stretches.filter(
    ([[ax, ay], [bx, by]]) =>
      Math.min(ax, bx) <= near.right &&
      Math.max(ax, bx) >= near.left &&
      Math.min(ay, by) <= near.bottom &&
      Math.max(ay, by) >= near.top,
  ),
});

/** Whether a label at one of its places is clear of what is taken. */
export function isFree(label: Label, place: Candidate, taken: Taken): boolean {
  const inks = labelInks(label, place);
  const texts = inks.filter((item): item is TextInk => item.kind === "text");
  const box = growBox(joinBoxes(texts.map(textBox)), CLEAR);
  const { within } = taken;
  if (within && !isInside(box, within)) return false;
  if (taken.boxes.some((other) => boxesOverlap(box, other, BETWEEN))) return false;
  if (taken.stretches.some(([a, b]) => segmentMeetsBox(a, b, box))) return false;
  const leaders = obstacleStretches(inks);
  return leaders.every(([a, b]) => taken.boxes.every((other) => !segmentMeetsBox(a, b, other)));
}

function isInside(box: Box, within: Box): boolean {
  return (
    box.left >= within.left &&
    box.right <= within.right &&
    box.top >= within.top &&
    box.bottom <= within.bottom
  );
}

/** The ink of one label at one of its places. */
export function labelInks(label: Label, { at, anchor, leader }: Candidate): Ink[] {
  const texts = textLines(label.lines, at, { style: label.style, anchor });
  return leader ? [drawLeader(joinBoxes(texts.map(textBox)), leader), ...texts] : texts;
}

/** A thin line from the nearest side of a label to the thing it names. */
export function drawLeader(box: Box, to: Point): PathInk {
  const clear = growBox(box, CLEAR + 0.2);
  const x = Math.min(Math.max(to[0], clear.left), clear.right);
  const middle = (clear.top + clear.bottom) / 2;
  const isBeside = x !== to[0];
  const y = isBeside ? middle : Math.min(Math.max(to[1], clear.top), clear.bottom);
  const paths = [pathOf([[x, y], to])];
  return { kind: "path", className: "line leader", paths, isObstacle: true };
}

/** Every straight stretch that text may not cross. */
export function obstacleStretches(inks: readonly Ink[]): Stretch[] {
  const stretches: Stretch[] = [];
  for (const ink of inks) {
    if (ink.kind !== "path" || !ink.isObstacle) continue;
    for (const path of ink.paths) {
      const points = flattenPath(path, 0.1);
      const [first] = points;
      if (path.isClosed && first) points.push(first);
      points.forEach((point, index) => {
        const next = points[index + 1];
        if (next) stretches.push([point, next]);
      });
    }
  }
  return stretches;
}
