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
  /** How far from the start of one block another may start. The whole length of the first if left out. */
  readonly advance?: (first: Strip, second: Strip) => Mm;
  /** Places no piece may lie across, ascending: ends of lengths on hand. */
  readonly walls?: readonly Mm[];
}

/**
 * Blocks laid one after another, each as low as it keeps clear of all before it. Pieces of one kind
 * follow one another, set by set, as `counts` lists them. No blocks give an empty strip.
 */
export function stackStrips(
  blocks: readonly Block[],
  { counts, step, advance = ({ length }) => length, walls = [] }: StackRules,
): Strip {
  let end: Mm = 0;
  const starts: Mm[] = [];
  blocks.forEach(({ strip }, i) => {
    const least = starts.map((start, j) => start + advance(blocks[j]!.strip, strip));
    let start = onStep(Math.max(0, starts[i - 1] ?? 0, ...least), step);
    for (const wall of walls) {
      if (start < wall - 1e-6 && start + strip.length > wall + 1e-6) start = onStep(wall, step);
    }
    starts.push(start);
    end = Math.max(end, start + strip.length);
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

/** The next multiple of a step; what has been found by sums may miss it by a trifle. */
const onStep = (at: Mm, step: Mm): Mm => (step > 0 ? Math.ceil(at / step - 1e-9) * step : at);
