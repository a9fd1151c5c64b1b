import { Clipper, FillRule } from "clipper2-ts";
import type { Point, Polygon } from "../plane/types.ts";
import type { Box } from "./types.ts";

/** The part of a region that lies in a box; empty where none does. */
export function clipRegion(
  region: readonly Polygon[],
  { left, right, top, bottom }: Box,
): Polygon[] {
  const paths = region.map((ring) => ring.map(([x, y]) => ({ x, y })));
  const box = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  return Clipper.intersectD(paths, [box], FillRule.NonZero, 4).map((ring) =>
    ring.map(({ x, y }): Point => [x, y]),
  );
}
