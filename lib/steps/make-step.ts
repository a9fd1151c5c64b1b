import { cautionsFor } from "./cautions-for.ts";
import type { Step } from "./types.ts";

/** What a step must say; the rest has a plain default. */
export interface StepGiven extends Partial<Step> {
  readonly id: string;
  readonly group: string;
  readonly title: string;
  readonly actions: readonly string[];
  readonly uses: readonly string[];
  /** Cautions of the process, beyond those of the tools used. */
  readonly processes?: readonly string[];
}

/** A whole step: the cautions of everything it uses are added to it. */
export function makeStep({ processes = [], ...given }: StepGiven): Step {
  return {
    makes: [],
    check: null,
    remedy: null,
    figure: null,
    notes: [],
    ...given,
    uses: [...new Set(given.uses)],
    cautions: cautionsFor(given.uses, processes),
  };
}
