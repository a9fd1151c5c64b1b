import type { Finding } from "../checks/types.ts";

/** One step of the making. Actions are sentences with one verb each, at most 20 words. */
export interface Step {
  readonly id: string;
  /** Part of the work it belongs to: "Foam", "Cutting", "Sewing", "Fitting", … */
  readonly group: string;
  readonly title: string;
  readonly actions: readonly string[];
  /** Pieces, blocks, panels, tools used. */
  readonly uses: readonly string[];
  /** What exists after it that did not before. */
  readonly makes: readonly string[];
  /** Stand before the actions in print. */
  readonly cautions: readonly Caution[];
  readonly check: string | null;
  /** What to do when the check fails. */
  readonly remedy: string | null;
  /** Figure id, or null. */
  readonly figure: string | null;
  /** Markdown the author added. */
  readonly notes: readonly string[];
  /** Its cautions are printed in full though they stood in full before: a method for many steps to come. */
  readonly isMethod?: boolean;
  /** Further names an author may call it by, where it stands for several steps. */
  readonly alsoNamed?: readonly string[];
}

/** A safety message with the four parts ANSI Z535.6 asks for. */
export interface Caution {
  readonly id: string;
  readonly severity: Finding["severity"];
  readonly hazard: string;
  readonly consequence: string;
  readonly avoid: string;
  readonly source: string;
}
