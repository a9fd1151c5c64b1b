import type { Mm } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import { pipingOverlap, pipingRuns } from "../seams/piping-runs.ts";

/** Cord that the piped seams of one cover take; 0 where nothing is piped. */
export const cordLength = (cover: Cover): Mm =>
  pipingRuns(cover).reduce((sum, { length }) => sum + length + pipingOverlap, 0);
