import type { Work } from "../estimate/types.ts";

/** ANSI Z535 words: danger will, warning could seriously, caution could slightly hurt; note is not about injury. */
export type Severity = "danger" | "warning" | "caution" | "note";

/** Something the reader should know before starting. Returned, never thrown. */
export interface Finding {
  readonly id: string;
  readonly severity: Severity;
  /** Solid, panel, seam, stock or step it concerns, such as `solid/seat` or `step/cut-foam`. */
  readonly about: string;
  readonly message: string;
  readonly remedy: string;
  readonly source: string;
}

/** One thing to look for. It sees everything worked out so far and changes nothing. */
export type Check = (work: Work) => readonly Finding[];
