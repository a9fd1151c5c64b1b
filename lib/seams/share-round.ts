import type { Radians, Ratio } from "../plane/types.ts";
import { arcSweep } from "../plane/segments.ts";
import { theFace } from "../solids/the-face.ts";
import { partEdge, type EdgePart } from "../solids/part-edge.ts";
import type { Face, Solid } from "../solids/types.ts";
import { gaugeOpening, type Gauged, type Load } from "./gauge-opening.ts";

export interface SharedOpening {
  readonly plan: Gauged;
  readonly part: EdgePart;
  readonly words: string;
}

/**
 * How much of a round seam may be left open, and the words for it.
 *
 * @source our choice: common practice, no source, opens a round cushion over half its seam or a little more
 */
const shares: readonly (readonly [Ratio, string])[] = [
  [1 / 2, "Half"],
  [5 / 8, "Five eighths"],
  [2 / 3, "Two thirds"],
  [3 / 4, "Three quarters"],
];
/** A shorter arc is one corner of many and is opened whole. */
const leastSweep: Radians = Math.PI * 0.99;

/** The least share of the one round seam round a flat face that lets the foam in; null where none does. */
export function shareRound(
  face: Face,
  edge: string,
  cover: Solid,
  load: Load,
): SharedOpening | null {
  const side = face.loops[0]!.find((one) => one.edge === edge)!;
  const sweep = side.segments.reduce(
    (sum, segment) => sum + (segment.kind === "arc" ? Math.abs(arcSweep(segment)) : 0),
    0,
  );
  if (sweep < leastSweep) return null;
  for (const [share, word] of shares) {
    const part = { edge, share };
    const plan = gaugeOpening([edge], partEdge(cover, part), load);
    const words = `${word} of the round seam at ${theFace(face.label)}`;
    if (plan.fits) return { plan, part, words };
  }
  return null;
}
