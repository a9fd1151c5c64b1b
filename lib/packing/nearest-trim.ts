import type { Count, Mm } from "../plane/types.ts";
import { type CutJob, sameSize } from "./cut-job.ts";
import { needsNoBuying } from "./pack-cuts.ts";
import type { CutWords } from "./make-plans.ts";
import type { Part } from "./types.ts";

/** The most a size may be trimmed to save stock, as a share of it. @source our choice */
const mostTrim = 0.15;
/** Fills tried for each trim. */
const trimTries = 48;
/** More items than this are left untried: the search would outlast the plan itself. */
const mostItems: Count = 40;

/** One size to trim: of one part, or of all parts that share it. */
interface Side {
  readonly size: Mm;
  readonly words: string;
  readonly isOn: (part: Part, axis: Count) => boolean;
}

/**
 * The smallest trim of one size that saves buying any stock, in words; null when none is found. A
 * size that several parts share may be trimmed on all of them together. The trim is whole steps, so
 * that what is printed is what was tried.
 *
 * @param remake the job of the parts once they are trimmed
 */
export function nearestTrim(
  parts: readonly Part[],
  remake: (parts: readonly Part[]) => CutJob,
  { say, step }: CutWords,
): string | null {
  if (parts.reduce((sum, { copies }) => sum + copies, 0) > mostItems) return null;
  let least: Mm = Infinity;
  let words: string | null = null;
  for (const side of listSides(parts, say)) {
    const suffices = (steps: number): boolean =>
      needsNoBuying(remake(trimSide(parts, side, steps * step)), trimTries);
    const most = Math.min(Math.floor((side.size * mostTrim) / step), Math.ceil(least / step) - 1);
    if (most < 1 || !suffices(most)) continue;
    let [low, high] = [0, most];
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (suffices(middle)) high = middle;
      else low = middle;
    }
    least = high * step;
    words = `make ${side.words} shorter by ${say(least)}`;
  }
  return words;
}

/** Every size of every part, then every size that more than one part has. */
function listSides(parts: readonly Part[], say: (length: Mm) => string): readonly Side[] {
  const own = parts.flatMap((part) =>
    part.size.map((size, axis): Side => ({
      size,
      words: `the ${say(size)} side of ${part.label}`,
      isOn: (other, at) => other === part && at === axis,
    })),
  );
  const sizes = [...new Set(parts.flatMap(({ size }) => size))];
  const shared = sizes.flatMap((size): readonly Side[] => {
    const has = (each: Mm): boolean => Math.abs(each - size) <= sameSize;
    if (parts.filter((part) => part.size.some(has)).length < 2) return [];
    return [{ size, words: `every ${say(size)} side`, isOn: (part, at) => has(part.size[at]!) }];
  });
  return [...own, ...shared];
}

const trimSide = (parts: readonly Part[], side: Side, trim: Mm): readonly Part[] =>
  parts.map((part) => ({
    ...part,
    size: part.size.map((size, axis) => (side.isOn(part, axis) ? size - trim : size)),
  }));
