import { scale } from "./points.ts";
import type { Loop, Ratio } from "./types.ts";

/** A loop made larger or smaller from the origin. */
export const scaleLoop = (loop: Loop, by: Ratio): Loop =>
  loop.map((segment) =>
    segment.kind === "line"
      ? { ...segment, from: scale(segment.from, by), to: scale(segment.to, by) }
      : {
          ...segment,
          from: scale(segment.from, by),
          to: scale(segment.to, by),
          centre: scale(segment.centre, by),
        },
  );
