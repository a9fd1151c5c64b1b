import type { Count } from "../plane/types.ts";

export interface FaultPlace {
  readonly file: string;
  readonly line: Count;
  readonly field: string;
}

/** A fault in a project file that its author can mend. The message ends with how. */
export class ProjectError extends Error {
  override readonly name = "ProjectError";
  readonly file: string;
  readonly line: Count;
  readonly field: string;

  constructor(at: FaultPlace, fault: string, fix: string) {
    super(`${at.file}:${at.line} ${at.field}: ${fault}. ${fix}.`);
    this.file = at.file;
    this.line = at.line;
    this.field = at.field;
  }
}
