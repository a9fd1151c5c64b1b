import type { Count, Mm } from "../plane/types.ts";
import type { Strip } from "./strip-types.ts";

/** A strip that holds some sets of all the pieces. */
export interface Block {
  readonly strip: Strip;
  readonly sets: Count;
}

export interface StackRules {
  /** Pieces of each kind in one set. */
  readonly counts: readonly Count[];
  /** Blocks start at a multiple of this; 0 for anywhere. */
  readonly step: Mm;
  /** Places no piece may lie across, ascending: ends of lengths on hand. */
  readonly walls?: readonly Mm[];
}

/**
 * Blocks laid one after another. Pieces of one kind follow one another, set by set, as `counts`
 * lists them. No blocks give an empty strip.
 */
export function stackStrips(
  blocks: readonly Block[],
  { counts, step, walls = [] }: StackRules,
): Strip {
  let end: Mm = 0;
  const starts = blocks.map(({ strip }) => {
    let start = onStep(end, step);
    for (const wall of walls) {
      if (start < wall - 1e-6 && start + strip.length > wall + 1e-6) start = onStep(wall, step);
    }
    end = start + strip.length;
    return start;
  });
  const places = counts.flatMap((count, kind) => {
    const before = counts.slice(0, kind).reduce((sum, each) => sum + each, 0);
    return blocks.flatMap(({ strip, sets }, i) =>
      strip.places
        .slice(before * sets, (before + count) * sets)
        .map((place) => ({ ...place, y: place.y + starts[i]! })),
    );
  });
  return { places, length: end };
}

const onStep = (at: Mm, step: Mm): Mm => (step > 0 ? Math.ceil(at / step - 1e-9) * step : at);
