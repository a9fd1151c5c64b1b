/** Gives numbers from 0 up to 1 in a fixed order. */
export type Random = () => number;

/**
 * A small generator of even numbers: the same seed gives the same row, on every machine.
 *
 * @source Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators" (the 32-bit mixer)
 */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed ^= mixed >>> 15;
    mixed = Math.imul(mixed, 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296;
  };
}

/** A whole number from 0 up to, but not, `below`. */
export const randomBelow = (random: Random, below: number): number => Math.floor(random() * below);

/** The list in a new order. */
export function shuffle<T>(list: readonly T[], random: Random): T[] {
  const mixed = [...list];
  for (let i = mixed.length - 1; i > 0; i--) {
    const j = randomBelow(random, i + 1);
    [mixed[i], mixed[j]] = [mixed[j]!, mixed[i]!];
  }
  return mixed;
}
