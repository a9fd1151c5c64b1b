import type { Mm, Point } from "../plane/types.ts";
import { add, cross, distance, fromAngle, scale, unit } from "../plane/points.ts";
import { directionAlong } from "../plane/segments.ts";
import type { Panel, PanelSide } from "../panels/types.ts";
import { placeAlong } from "./mark-seams.ts";
import { runLength, type SeamRun } from "./find-seams.ts";
import type { Clip, Seam } from "./types.ts";

/** A clip stops this far short of the seam line: a thread or two. @source our choice */
export const threadShort: Mm = 1;

/** Clips into the allowance at the inward corners of a panel's own outline. */
export function clipInwardCorners(panel: Panel, allowance: Mm): Clip[] {
  return panel.loops.flatMap((loop) => {
    const segments = loop.flatMap((side) => side.segments);
    return segments.flatMap((segment, i): Clip[] => {
      const before = segments.at(i - 1)!;
      const [ahead, away] = [directionAlong(before, 1), directionAlong(segment, 0)];
      if (cross(ahead, away) > -1e-6) return [];
      // Along the bisector as far as the mitred cut line.
      const out = unit(outward(ahead, away));
      const reach = allowance / Math.max(0.2, Math.abs(cross(out, away)));
      return [clipAt(segment.from, scale(out, reach))];
    });
  });
}

/** Outward at a corner: square to the mean direction of travel. */
const outward = (ahead: Point, away: Point): Point => {
  const along = add(ahead, away);
  // A corner that doubles back has no mean direction: go on straight ahead.
  return Math.hypot(along[0], along[1]) < 1e-9 ? ahead : [along[1], -along[0]];
};

const clipAt = (corner: Point, reach: Point): Clip => {
  const length = distance([0, 0], reach);
  return { from: add(corner, reach), to: add(corner, scale(reach, threadShort / length)) };
};

/** Clips where the partner turns a corner and this panel runs straight past it. */
export function clipForPartner(
  run: SeamRun,
  seam: Pick<Seam, "corners" | "panels">,
  allowance: Mm,
): { panel: string; clip: Clip }[] {
  return seam.corners.flatMap(({ along, clip }) => {
    if (clip === null) return [];
    const sides = clip === seam.panels[0] ? run.first : run.second;
    const isOther = sides === run.second;
    const at = placeAlong(sides, (along / runLength(run.first)) * runLength(sides), isOther);
    return isInward(sides, at.at)
      ? []
      : [{ panel: clip, clip: clipAt(at.at, fromAngle(at.towards, allowance)) }];
  });
}

/** Whether the panel's own outline turns inward there: then it has its clip already. */
function isInward(sides: readonly PanelSide[], at: Point): boolean {
  return sides.some((side, i) => {
    const next = sides[i + 1];
    if (next === undefined) return false;
    const [a, b] = [side.segments.at(-1)!, next.segments[0]!];
    const [end, start] =
      distance(a.to, b.from) < 1e-6 ? [a, b] : [next.segments.at(-1)!, side.segments[0]!];
    return (
      distance(end.to, at) < 1e-3 && cross(directionAlong(end, 1), directionAlong(start, 0)) < -1e-6
    );
  });
}
