import type { Count } from "./types.ts";

/** Numbers from 0 up to, not including, 1: the same row for the same seed, on every machine. */
export type RandomNumbers = () => number;

/** Numbers that look thrown by chance, for benches and searches that must come out alike each time. */
export function seededRandom(seed: Count): RandomNumbers {
  let state = seed >>> 0;
  // @source Vigna 2014, SplitMix32 as given in Steele, Lea and Flood, "Fast splittable pseudorandom
  // number generators", with the constants of murmur3's finaliser.
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}
