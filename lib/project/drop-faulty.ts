import type { FormFault } from "./explain-issues.ts";
import { explainIssues } from "./explain-issues.ts";
import { projectSchema } from "./schema.ts";
import type { RawProject } from "./schema.ts";

export interface FormCheck {
  /** What is left when every value of the wrong form is taken out; null when nothing is. */
  readonly raw: RawProject | null;
  readonly faults: readonly FormFault[];
  /** Dotted fields that were taken out. */
  readonly dropped: ReadonlySet<string>;
}

type Container = Record<PropertyKey, unknown>;

/** Values without which nothing can be read, so that other faults can be found all the same. */
const needed: Readonly<Container> = { title: "Untitled", units: "mm" };
const mostRounds = 12; // no fault lies deeper

/**
 * Check front matter against the schema. Where it does not fit, take the smallest faulty part out and
 * try again, so that one run finds the faults of form and the faults of meaning beside them.
 */
export function dropFaulty(value: unknown): FormCheck {
  const left = structuredClone(value);
  const dropped = new Set<string>();
  let faults: readonly FormFault[] | null = null;
  for (let round = 0; round < mostRounds; round += 1) {
    const result = projectSchema.safeParse(left);
    if (result.success) return { raw: result.data, faults: faults ?? [], dropped };
    const found = explainIssues(result.error.issues, left);
    faults ??= found;
    for (const { path } of found) drop(left, path, dropped);
  }
  return { raw: null, faults: faults ?? [], dropped };
}

function drop(root: unknown, path: readonly PropertyKey[], dropped: Set<string>): void {
  const [top] = path;
  if (!isContainer(root) || top === undefined) return;
  // A missing or faulty title or unit is put in, not taken out.
  if (path.length === 1 && Object.hasOwn(needed, top)) {
    root[top] = needed[top];
    return;
  }
  let at: Container = root;
  let keep: Container = root;
  let depth = 0;
  // Lists are dropped whole: taking one out would shift the others away from their lines.
  for (; depth < path.length - 1; depth += 1) {
    const next = at[path[depth] ?? ""];
    if (Array.isArray(next) || !isContainer(next)) break;
    keep = at;
    at = next;
  }
  const key = path[depth] ?? "";
  const isThere = Object.hasOwn(at, key);
  // Is a required value missing? Then its parent cannot stay.
  const [from, gone] = isThere || depth === 0 ? [at, depth + 1] : [keep, depth];
  delete from[path[gone - 1] ?? ""];
  dropped.add(path.slice(0, gone).map(String).join("."));
}

function isContainer(value: unknown): value is Container {
  return typeof value === "object" && value !== null;
}
