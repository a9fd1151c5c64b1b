import type { Count, Mm } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import { placedParts } from "./placed-parts.ts";

/** Two placed parts that touch by a face. */
export interface WoodJoint {
  readonly parts: readonly [string, string];
  /** Which of the placed parts they are, counted from 0. */
  readonly places: readonly [Count, Count];
  /** Sizes of the face they share, the smaller first. */
  readonly size: readonly [Mm, Mm];
}

/** Faces nearer than this touch. */
const touching: Mm = 0.5;
/** A shared face smaller than this either way takes no screw. Our choice. */
const smallest: Mm = 10;
const axes = [0, 1, 2] as const;

/** Where placed parts meet, and so where they are screwed, nailed or glued. */
export function jointsBetween(project: Project): WoodJoint[] {
  const parts = placedParts(project);
  return parts.flatMap((one, index) =>
    parts.slice(index + 1).flatMap((other, after) => {
      const overlaps = axes.map(
        (axis) =>
          Math.min(one.max[axis], other.max[axis]) - Math.max(one.min[axis], other.min[axis]),
      );
      const flat = overlaps.findIndex((overlap) => Math.abs(overlap) <= touching);
      const sides = overlaps.filter((_, axis) => axis !== flat).toSorted((a, b) => a - b);
      const [small = 0, large = 0] = sides;
      if (flat < 0 || sides.length !== 2 || small < smallest) return [];
      const places = [index, index + 1 + after] as const;
      return [{ parts: [one.piece, other.piece] as const, places, size: [small, large] as const }];
    }),
  );
}
