import type { Loop, Point } from "../plane/types.ts";
import { atHome, placeLoop } from "../plane/place.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { distance } from "../plane/points.ts";
import { pointAlong, segmentLength } from "../plane/segments.ts";
import type { Panel } from "./types.ts";

/** Corners this close are the same: far below what anyone can cut. */
const samePlace = 1e-3;

/** Mark panels that are the same as, or the mirror image of, an earlier one the same way up. */
export function pairPanels(panels: readonly Panel[]): Panel[] {
  return panels.map((panel, i) => {
    const earlier = panels.slice(0, i);
    const same = earlier.find((other) => matches(panel, other, false));
    if (same) return { ...panel, sameAs: same.id };
    const mirror = earlier.find((other) => matches(panel, other, true));
    return mirror ? { ...panel, mirrorOf: mirror.id } : panel;
  });
}

function matches(panel: Panel, other: Panel, isFlipped: boolean): boolean {
  if (
    Math.abs(panel.area - other.area) > 1 ||
    panel.shape.holes.length !== other.shape.holes.length
  )
    return false;
  const own = marks(panel.shape.outer);
  const mirrored = placeLoop(other.shape.outer, { ...atHome, isFlipped });
  const { min } = loopBounds(mirrored);
  const theirs = marks(placeLoop(mirrored, { ...atHome, shift: [-min[0], -min[1]] }));
  return (
    own.length === theirs.length &&
    own.every((mark) => theirs.some((one) => distance(mark, one) < samePlace))
  );
}

/** Corners and middles: enough to tell two outlines apart. */
const marks = (loop: Loop): Point[] =>
  loop
    .filter((segment) => segmentLength(segment) > samePlace)
    .flatMap((segment) => [segment.from, pointAlong(segment, 0.5)]);
