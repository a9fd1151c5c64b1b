import type { Count } from "../plane/types.ts";
import type { Misreading } from "./types.ts";

/** Say that a text could not be read: what is wrong, how to mend it, and at which character. */
export function misread(fault: string, fix: string, at: Count = 0): Misreading {
  return { ok: false, fault, fix, at, isFollowOn: false };
}
