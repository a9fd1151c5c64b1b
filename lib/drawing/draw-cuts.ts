import { evenRuns } from "../packing/even-runs.ts";
import { findFreeCut } from "../packing/find-free-cut.ts";
import type { Cut, CutPlan, UsedStock } from "../packing/types.ts";
import type { Mm, Point, Polygon } from "../plane/types.ts";
import { boxOfPoints } from "./boxes.ts";
import { measureText } from "./measure-text.ts";
import { ringInk } from "./dot-ink.ts";
import { partWords } from "./part-words.ts";
import { pathOf } from "./paper-path.ts";
import { placeLabels } from "./place-labels.ts";
import type { Candidate, Ink, Label, Placed, ToPaper } from "./types.ts";

/** Two axes of a stock that a view shows: plan is length and width, side is length and thickness. */
export interface CutView {
  readonly across: 0 | 1 | 2;
  readonly up: 0 | 1 | 2;
  readonly toPaper: ToPaper;
}

/** A rectangle of the stock in a view. */
export function viewRectangle(at: readonly Mm[], size: readonly Mm[], view: CutView): Polygon {
  const [x, y] = [at[view.across] ?? 0, at[view.up] ?? 0];
  const [w, h] = [size[view.across] ?? 0, size[view.up] ?? 0];
  const corners: Point[] = [
    [x, y],
    [x + w, y],
    [x + w, y + h],
    [x, y + h],
  ];
  return corners.map(view.toPaper);
}

/** Where a cut runs in a view; null when the view shows it face on. */
export function cutRun(cut: Cut, view: CutView): [Point, Point] | null {
  const { at, size } = cut.of;
  const along = cut.axis === view.across ? view.up : cut.axis === view.up ? view.across : null;
  if (along === null) return null;
  const start = at[along] ?? 0;
  const end = start + (size[along] ?? 0);
  const point = (value: Mm): Point =>
    view.toPaper(cut.axis === view.across ? [cut.at, value] : [value, cut.at]);
  return [point(start), point(end)];
}

/** A cut, or several told by one number, and where the number may stand. */
interface NumberedRun {
  readonly kind: Cut["kind"];
  readonly number: string;
  readonly run: [Point, Point];
}

/** The cuts of a view as heavy lines, each with its number in a ring on or at the end of its line. */
export function drawCuts(used: UsedStock, cuts: readonly Cut[], view: CutView): Placed {
  const runs = groupSmall(used, cuts, view).flatMap((group): NumberedRun[] => {
    const [first] = group;
    const last = group.at(-1)!.order;
    const run = first.kind === "free" ? freeRun(first, used, view) : cutRun(first, view);
    const number = last === first.order ? `${last}` : `${first.order}–${last}`;
    return run ? [{ kind: first.kind, number, run }] : [];
  });
  const lines: Ink = {
    kind: "path",
    className: "line cut",
    paths: runs.filter(({ kind }) => kind !== "free").map(({ run }) => pathOf(run)),
    isObstacle: true,
  };
  // Numbers stand at the ends of their lines, outside the stock, or on the line with white behind.
  const taken: Ink[] = [];
  const rings: Ink[] = [];
  const collisions: string[] = [];
  for (const { number, run } of runs) {
    const label: Label = { lines: [number], style: "name", candidates: [] };
    const texts = taken.filter((ink) => ink.kind === "text" || ink.className.includes("ring"));
    const { collisions: none, inks } = placeLabels(
      [{ ...label, candidates: numberPlaces(run) }],
      texts,
    );
    collisions.push(...none.map((text) => `${text} (cut number)`));
    const text = inks.find((ink) => ink.kind === "text");
    if (text?.kind !== "text") continue;
    const leaders = inks.filter((ink) => ink.kind === "path");
    const radius = Math.max(2.9, measureText(text.text, "name") / 2 + 1);
    const ring = ringInk(text.at, radius, "line ring");
    rings.push(...leaders, { ...ring, isObstacle: false }, { ...text, isGrounded: true });
    taken.push({ ...ring, isObstacle: true }, ...leaders, text);
  }
  return { inks: [lines, ...rings], collisions };
}

/** Places for a cut's number: on its line, at its ends, then beside it with a leader. */
function numberPlaces([a, b]: readonly [Point, Point]): Candidate[] {
  const shares = [0.12, 0.88, 0.5, 0.3, 0.7, 0.2, 0.8, 0.4, 0.6];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const along: Point = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const on = (share: number): Point => [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  const beyond = (from: Point, by: Mm): Point => [from[0] + along[0] * by, from[1] + along[1] * by];
  const plain = [...shares.map(on), beyond(a, -3), beyond(b, 3)];
  const middle = on(0.5);
  const round = [9, 13, 18, 24].flatMap((reach) =>
    Array.from({ length: 12 }, (_, index): Point => {
      const angle = (index * Math.PI) / 6;
      return [middle[0] + reach * Math.cos(angle), middle[1] + reach * Math.sin(angle)];
    }),
  );
  return [
    ...plain.map((at): Candidate => ({ at, anchor: "middle", leader: null })),
    ...round.map((at): Candidate => ({ at, anchor: "middle", leader: middle })),
  ];
}

/** Outlines smaller than this on paper would be hidden by numbers of their own. @source our choice */
const smallOutline: Mm = 15;

/** Cuts one by one, but those round small outlines of one kind that follow one another together. */
function groupSmall(
  used: UsedStock,
  cuts: readonly Cut[],
  view: CutView,
): readonly (readonly [Cut, ...Cut[]])[] {
  const nameOf = (cut: Cut): string => {
    const found = cut.kind === "free" ? findFreeCut(cut, used) : null;
    if (found === null) return `${cut.order}`;
    const { left, right, top, bottom } = boxOfPoints(found.ring.map(view.toPaper));
    const isSmall = Math.min(right - left, bottom - top) < smallOutline;
    return isSmall ? `${found.part} ${found.isHole}` : `${cut.order}`;
  };
  return evenRuns(cuts, { kind: nameOf, at: () => 0, fewest: 2 });
}

/** The longest side of the outline or hole that a free cut goes round. */
function freeRun(cut: Cut, used: UsedStock, view: CutView): [Point, Point] | null {
  const ring = findFreeCut(cut, used)?.ring;
  const corners = (ring ?? []).map(view.toPaper);
  const sides = corners.map((a, index): [Point, Point] => [
    a,
    corners[(index + 1) % corners.length] ?? a,
  ]);
  const length = ([a, b]: [Point, Point]) => Math.hypot(b[0] - a[0], b[1] - a[1]);
  // A side aslant cannot be taken for a straight cut beside it.
  const slant = ([a, b]: [Point, Point]) => Math.min(Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]));
  return sides.sort((a, b) => slant(b) - slant(a) || length(b) - length(a))[0] ?? null;
}

/** What a plan says for each stock that is used: sizes, parts, cuts and offcuts in words. */
export function describeCuts(
  plan: CutPlan,
  used: UsedStock,
  write: (sizes: readonly Mm[]) => string,
): string {
  const parts = used.places.map(
    ({ part, size, twin }) =>
      `${twin === part ? "two of " : ""}${partWords(part)}` +
      `${twin === undefined || twin === part ? "" : ` and ${partWords(twin)}`}` +
      `${twin === undefined ? "" : ", cut aslant,"} ${write(size)}`,
  );
  const cuts = [...used.cuts]
    .sort((a, b) => a.order - b.order)
    .map(({ order, kind, at }) => `${order} ${cutWords[kind]} at ${write([at])}`);
  const offcuts = used.offcuts.map(
    ({ size, use }) => `${write(size)}${use ? ` (enough for ${use})` : ""}`,
  );
  return [
    `${plan.kind} of ${write(used.size)}.`,
    `Parts: ${parts.join("; ")}.`,
    cuts.length > 0 ? `Cuts in order: ${cuts.join("; ")}.` : "No cut is needed.",
    offcuts.length > 0 ? `Offcuts: ${offcuts.join("; ")}.` : "",
  ]
    .filter((part) => part !== "")
    .join(" ");
}

const cutWords: Readonly<Record<Cut["kind"], string>> = {
  rip: "along",
  cross: "across",
  slice: "to thickness",
  free: "round the outline",
};
