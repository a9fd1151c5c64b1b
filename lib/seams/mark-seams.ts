import type { Count, Loop, Mm, Point, Radians } from "../plane/types.ts";
import { angleOf, leftOf, scale } from "../plane/points.ts";
import { directionAlong, pointAlong, segmentLength } from "../plane/segments.ts";
import type { PanelSide } from "../panels/types.ts";
import { runLength, type SeamRun } from "./find-seams.ts";
import type { Notch, Seam } from "./types.ts";

/** Seams this long get two notches; shorter ones down to a hand's width get one. */
const twoNotches: Mm = 200;
const oneNotch: Mm = 80;
// Off the middle and at unlike distances from the ends, so that a panel sewn on turned round shows.
const pair = [0.3, 0.62] as const;
const single = [0.38] as const;
const quarters = [0.125, 0.375, 0.625, 0.875] as const;

/** Notches of one seam on both its panels; twins carry one number. */
export function markSeam(
  run: SeamRun,
  seam: Pick<Seam, "id" | "isRing">,
  firstNumber: Count,
): { panel: string; notch: Notch }[] {
  const length = runLength(run.first);
  const shares =
    seam.isRing && length >= twoNotches
      ? quarters
      : length >= twoNotches
        ? pair
        : length >= oneNotch
          ? single
          : [];
  return shares.flatMap((share, i) => {
    const number = firstNumber + i;
    // The partner's sides are listed in our order, but each runs the other way.
    const own = placeAlong(run.first, share * length, false);
    const other = placeAlong(run.second, share * runLength(run.second), true);
    return [
      { panel: run.first[0]!.panel, notch: { ...own, seam: seam.id, number } },
      { panel: run.second[0]!.panel, notch: { ...other, seam: seam.id, number } },
    ];
  });
}

/** A point some way along a list of sides, and the way out of the panel there. */
export function placeAlong(
  sides: readonly PanelSide[],
  along: Mm,
  isBackward: boolean,
): { at: Point; towards: Radians } {
  let left = along;
  for (const side of sides) {
    if (left <= side.length + 1e-9 || side === sides.at(-1)) {
      return pointOnSide(side.segments, isBackward ? side.length - left : left);
    }
    left -= side.length;
  }
  return { at: [0, 0], towards: 0 };
}

function pointOnSide(segments: Loop, along: Mm): { at: Point; towards: Radians } {
  let left = Math.max(0, along);
  for (const segment of segments) {
    const length = segmentLength(segment);
    if (left <= length + 1e-9 || segment === segments.at(-1)) {
      const share = Math.min(1, left / length);
      const out = scale(leftOf(directionAlong(segment, share)), -1);
      return { at: pointAlong(segment, share), towards: angleOf(out) };
    }
    left -= length;
  }
  return { at: segments[0]!.from, towards: 0 };
}
