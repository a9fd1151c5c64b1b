import type { Mm, Point } from "../plane/types.ts";
import { boxOfInks } from "./boxes.ts";
import { dotInk } from "./dot-ink.ts";
import type { Callout } from "./place-beside.ts";
import { placeLabels } from "./place-labels.ts";
import type { Candidate, Ink, Label, PaperPath, Picture } from "./types.ts";

/** Names of parts too small to write on, round the picture: above, at its sides, then below. */
export function placeRound(
  callouts: readonly Callout[],
  inks: readonly Ink[],
  { isInward = false }: { readonly isInward?: boolean } = {},
): Picture {
  const box = boxOfInks(inks);
  const middle = (box.left + box.right) / 2;
  // Words that run from their end towards the middle do not make the picture wider.
  const inward = (end: Point, y: Mm): Candidate[] =>
    isInward ? [place([end[0], y], end[0] > middle ? "end" : "start", end)] : [];
  const labels = callouts.map(({ lines, style, to, spots = [] }): Label => {
    const ends = [to, ...spots.filter((_, index) => index % 12 === 5)];
    const row = (y: Mm) =>
      ends.flatMap((end) => [
        ...inward(end, y),
        ...shifts.map((shift) => place([end[0] + shift, y], "middle", end)),
      ]);
    const beside = levels.flatMap((level) => [
      place([box.right + 4, to[1] + level], "start", to),
      place([box.left - 4, to[1] + level], "end", to),
    ]);
    const above = rows.flatMap((rise) => row(box.top - rise));
    const below = rows.flatMap((drop) => row(box.bottom + drop));
    return { lines, style, candidates: [...above, ...beside, ...below] };
  });
  const named = placeLabels(labels, inks);
  const dots = named.inks.flatMap((ink) => (ink.kind === "path" ? ink.paths.map(leaderEnd) : []));
  return { inks: [...named.inks, ...dots.map((end) => dotInk(end))], collisions: named.collisions };
}

const place = (at: Point, anchor: Candidate["anchor"], leader: Point): Candidate => ({
  at,
  anchor,
  leader,
});
const leaderEnd = ({ from, segments }: PaperPath): Point => segments[0]?.to ?? from;

const rows: readonly Mm[] = [6, 12, 18, 24, 30];
const shifts: readonly Mm[] = [0, 6, -6, 12, -12, 20, -20, 30, -30];
const levels: readonly Mm[] = [0, 7, -7, 14, -14, 21, -21, 28, -28];
