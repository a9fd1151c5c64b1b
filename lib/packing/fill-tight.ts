import type { Count } from "../plane/types.ts";
import type { Pattern } from "./best-pattern.ts";

/** Boards begun after which the search gives up. */
const mostBoards = 400_000;

/**
 * Cut all lengths from exactly `boards` boards, where hardly anything may be wasted: each board
 * takes the first length left and is then filled in every way that the waste still allows, least
 * waste first. Null when there is no way, or none was found in time. Quickest with sizes longest
 * first.
 *
 * @source Korf 2003, "An improved algorithm for optimal bin packing" (bin completion)
 */
export function fillTight(
  capacity: number,
  sizes: readonly number[],
  demand: readonly Count[],
  boards: Count,
): readonly Pattern[] | null {
  const bulk = sizes.reduce((sum, size, i) => sum + size * demand[i]!, 0);
  const rest = [...demand];
  const done: Pattern[] = [];
  let begun = 0;
  const fillNext = (waste: number): boolean => {
    const longest = rest.findIndex((count) => count > 0);
    if (longest < 0) return true;
    if (begun++ > mostBoards || done.length === boards) return false;
    rest[longest]! -= 1;
    const fillings = listFillings(capacity - sizes[longest]!, sizes, rest, longest, waste);
    rest[longest]! += 1;
    for (const { counts, left } of fillings) {
      const pattern = counts.map((count, i) => count + (i === longest ? 1 : 0));
      pattern.forEach((count, i) => (rest[i]! -= count));
      done.push(pattern);
      if (fillNext(waste - left)) return true;
      done.pop();
      pattern.forEach((count, i) => (rest[i]! += count));
    }
    return false;
  };
  return fillNext(boards * capacity - bulk) ? done : null;
}

interface Filling {
  readonly counts: readonly Count[];
  readonly left: number;
}

/** Fillings listed for one board at most. */
const mostFillings = 400;

/** Every way to fill a room with what is left, wasting no more than allowed; least waste first. */
function listFillings(
  room: number,
  sizes: readonly number[],
  rest: readonly Count[],
  from: Count,
  waste: number,
): readonly Filling[] {
  const found: Filling[] = [];
  const counts = sizes.map(() => 0);
  const reach = sizes.map((_, i) =>
    sizes.slice(i).reduce((sum, size, k) => sum + size * rest[i + k]!, 0),
  );
  const search = (at: Count, left: number): void => {
    if (found.length >= mostFillings) return;
    if (left <= waste) found.push({ counts: [...counts], left });
    for (let i = at; i < sizes.length; i++) {
      if (left - reach[i]! > waste) return;
      if (counts[i]! >= rest[i]! || sizes[i]! > left) continue;
      counts[i]! += 1;
      search(i, left - sizes[i]!);
      counts[i]! -= 1;
    }
  };
  search(from, room);
  return found.sort((a, b) => a.left - b.left);
}
