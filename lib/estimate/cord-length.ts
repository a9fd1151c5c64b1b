import type { Mm } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import { pipedLength } from "./seam-total.ts";

/** Overlap where the two ends of one length of piping meet. @source common practice, no source */
export const cordOverlap: Mm = 50;

/** Cord that the piped seams of one cover take; 0 where nothing is piped. */
export function cordLength(cover: Cover): Mm {
  const run = pipedLength(cover);
  return run <= 0 ? 0 : run + cordOverlap;
}
