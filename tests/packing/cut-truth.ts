/** A block that may lie in any turn, and what stock there is: for exhaustive searches of small jobs. */
export type Sizes = readonly number[];

/** Slack for sums of decimal millimetres. */
const slack = 1e-6;

/** One kind of stock of a small job. */
export interface TruthStock {
  readonly size: Sizes;
  readonly have: number;
  /** What one more costs; Infinity where none is sold. */
  readonly cost: number;
}

/** Every order of some sizes. */
function orders(sizes: Sizes): readonly Sizes[] {
  if (sizes.length < 2) return [sizes];
  return sizes.flatMap((each, i) =>
    orders(sizes.filter((_, j) => j !== i)).map((rest) => [each, ...rest]),
  );
}

/**
 * Whether right-across cuts give a set of blocks from a piece of stock: every parting of the set in
 * two, every axis, and the nearest place for the cut, of all those where some blocks in a row end,
 * at which the near part still gives its own. A nearer cut leaves the far part more.
 */
function canCut(blocks: readonly Sizes[], kerf: number): (set: number, room: Sizes) => boolean {
  const known = new Map<string, boolean>();
  const inSet = (set: number): readonly Sizes[] => blocks.filter((_, i) => (set >> i) % 2 === 1);
  const search = (set: number, room: Sizes): boolean => {
    if (room.some((each) => each <= 0)) return false;
    const own = inSet(set);
    const volume = (sizes: Sizes): number => sizes.reduce((all, each) => all * each, 1);
    if (own.reduce((sum, each) => sum + volume(each), 0) > volume(room) + slack) return false;
    if (own.length === 1) {
      return orders(own[0]!).some((lies) => lies.every((each, i) => each <= room[i]! + slack));
    }
    const lowest = set & -set;
    for (let near = (set - 1) & set; near > 0; near = (near - 1) & set) {
      if ((near & lowest) === 0) continue; // the same cut seen from the other side
      const runs = rowLengths(inSet(near), kerf);
      for (let axis = 0; axis < room.length; axis++) {
        const withSize = (value: number): Sizes => room.map((e, i) => (i === axis ? value : e));
        const run = firstThat(
          runs.filter((each) => each <= room[axis]!),
          (each) => cuts(near, withSize(each)),
        );
        if (run === undefined) continue;
        if (cuts(set - near, withSize(room[axis]! - run - kerf))) return true;
      }
    }
    return false;
  };
  const cuts = (set: number, lying: Sizes): boolean => {
    const room = [...lying].sort((a, b) => a - b); // blocks turn freely, so may the room
    const key = `${set} ${room.join(" ")}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const answer = search(set, room);
    known.set(key, answer);
    return answer;
  };
  return cuts;
}

/** The first of some rising figures that is enough, where all beyond it are; found by halving. */
function firstThat(rising: Sizes, isEnough: (each: number) => boolean): number | undefined {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (isEnough(rising[middle]!)) high = middle;
    else low = middle + 1;
  }
  return rising[low];
}

/** Every length that some of the blocks take in a row, a kerf between neighbours. */
function rowLengths(blocks: readonly Sizes[], kerf: number): readonly number[] {
  let sums = new Set([0]);
  for (const sizes of blocks) {
    sums = new Set([...sums].flatMap((sum) => [sum, ...sizes.map((each) => sum + each + kerf)]));
  }
  return [...sums]
    .filter((sum) => sum > 0)
    .map((sum) => sum - kerf)
    .sort((a, b) => a - b);
}

/** The least that must be bought for all blocks, and the fewest pieces of stock for that; null when they cannot be cut. */
export function cheapestCuts(
  blocks: readonly Sizes[],
  stocks: readonly TruthStock[],
  kerf: number,
): { readonly cost: number; readonly pieces: number } | null {
  const total = 2 ** blocks.length;
  const cuts = canCut(blocks, kerf);
  type Best = { readonly cost: number; readonly pieces: number } | null;
  const isBetter = (one: NonNullable<Best>, two: Best): boolean =>
    two === null ||
    one.cost < two.cost - slack ||
    (one.cost < two.cost + slack && one.pieces < two.pieces);
  let best: Best[] = Array.from({ length: total }, () => null);
  best[0] = { cost: 0, pieces: 0 };
  const open = (from: readonly Best[], size: Sizes, cost: number): Best[] => {
    const next = [...from];
    for (let done = 0; done < total; done++) {
      const before = from[done];
      if (before == null) continue;
      const rest = total - 1 - done;
      for (let set = rest; set > 0; set = (set - 1) & rest) {
        const choice = { cost: before.cost + cost, pieces: before.pieces + 1 };
        if (isBetter(choice, next[done + set]!) && cuts(set, size)) next[done + set] = choice;
      }
    }
    return next;
  };
  for (const { size, have } of stocks) for (let n = 0; n < have; n++) best = open(best, size, 0);
  const sold = stocks.filter(({ cost }) => cost < Infinity);
  for (let n = 0; n < blocks.length; n++) {
    for (const { size, cost } of sold) best = open(best, size, cost);
  }
  return best[total - 1] ?? null;
}
