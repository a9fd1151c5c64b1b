import type { Polygon } from "../plane/types.ts";
import { type Hatch, hatchLines } from "./hatch-lines.ts";
import { pathOf } from "./paper-path.ts";
import type { Box, PathInk } from "./types.ts";

/** Hatch a region of the paper, outer rings and holes together, leaving some boxes white. */
export function drawHatch(
  region: readonly Polygon[],
  hatch: Hatch,
  keepClear: readonly Box[] = [],
): PathInk {
  const paths = hatchLines(region, hatch, keepClear).map((line) => pathOf(line));
  return { kind: "path", className: `hatch ${hatch.dash}`, paths, isObstacle: false };
}

/** Tint a region very pale. Never the only sign of a meaning. */
export function drawTint(region: readonly Polygon[], tint: number): PathInk {
  const paths = region.map((ring) => pathOf(ring, true));
  return { kind: "path", className: `tint tint-${(tint % 8) + 1}`, paths, isObstacle: false };
}
