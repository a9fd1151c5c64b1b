import type { Mm } from "../plane/types.ts";

/** A presser foot's width: where a narrow hem is sewn. @source common practice, no source: about a quarter of an inch */
export const footWidth: Mm = 6.35;
/** From here on a hem is deep: its raw edge is folded under. @source our choice */
const deep: Mm = 20;
/** How much of a deep hem is folded under. @source common practice, no source */
export const foldedUnder: Mm = 10;
/** Stitches hold that fold this far from it. @source common practice, no source */
const fromFold: Mm = 2;

export const isDeepHem = (allowance: Mm): boolean => allowance >= deep;

/** How far from the finished edge a hem is sewn; 0 for a raw edge. */
export function hemStitch(allowance: Mm): Mm {
  if (allowance === 0) return 0;
  return isDeepHem(allowance) ? allowance - foldedUnder - fromFold : footWidth;
}
