import type { Count, Loop, Mm, Point, Radians, Ratio } from "../plane/types.ts";
import { angleOf, leftOf, scale } from "../plane/points.ts";
import { directionAlong, pointAlong, segmentLength } from "../plane/segments.ts";
import type { PanelSide } from "../panels/types.ts";
import { runLength, type SeamRun } from "./find-seams.ts";
import type { Notch, Seam } from "./types.ts";

/** Seams this long get two notches; shorter ones down to a hand's width get one. */
const twoNotches: Mm = 200;
const oneNotch: Mm = 80;
/** Seams nearer in length than this could be taken for one another. @source our choice */
const alike: Mm = 15;

/**
 * Shares of the seam at which notches may lie. The grid does not fall on itself when it is turned end
 * for end, so a panel sewn on the wrong way round shows, whatever pattern its neighbour has.
 *
 * @source our choice: 13 places 1/20 apart, half a place off the middle's mirror image
 */
const grid: readonly Ratio[] = Array.from({ length: 13 }, (_, i) => 0.2125 + i / 20);
/** Pairs far enough apart to be told from one double notch. */
const pairs: readonly (readonly [Ratio, Ratio])[] = grid.flatMap((a, i) =>
  grid.slice(i + 6).map((b) => [a, b] as const),
);
const singles: readonly Ratio[] = [0.38, 0.29, 0.2];
/** A quarter of the way round from one another. */
const quarters: readonly Ratio[] = [0.125, 0.375, 0.625, 0.875];
/** Second notches beside the first one, two or three quarters, so that only one turn fits. */
const doubled: Ratio = 0.04;

/** Which pattern of notches each seam takes: no two seams of like length on a cover share one. */
export function choosePatterns(seams: readonly Pick<Seam, "length">[]): Count[] {
  return seams.map(
    ({ length: [own] }, i) =>
      seams.slice(0, i).filter(({ length: [other] }) => Math.abs(own - other) <= alike).length,
  );
}

/** Notches of one seam on both its panels; twins carry one number. */
export function markSeam(
  run: SeamRun,
  seam: Pick<Seam, "id" | "isRing">,
  {
    firstNumber,
    pattern,
    ends = [],
  }: {
    readonly firstNumber: Count;
    readonly pattern: Count;
    /** Ends that need a notch of their own: shares 0 and 1. */
    readonly ends?: readonly Ratio[];
  },
): { panel: string; notch: Notch }[] {
  const length = runLength(run.first);
  const shares = [...chooseShares(length, seam.isRing, pattern), ...ends].toSorted((a, b) => a - b);
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

function chooseShares(length: Mm, isRing: boolean, pattern: Count): readonly Ratio[] {
  if (length < oneNotch) return [];
  if (length < twoNotches) return [singles[pattern % singles.length]!];
  if (!isRing) return pairs[pattern % pairs.length]!;
  const doubles = 1 + (pattern % (quarters.length - 1));
  return quarters.flatMap((share, i) => (i < doubles ? [share, share + doubled] : [share]));
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
