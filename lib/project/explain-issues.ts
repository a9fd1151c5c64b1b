import type { z } from "zod";
import { nearestWord } from "../units/nearest-word.ts";
import { describe } from "./describe.ts";
import { untell } from "./tell.ts";
import type { Fault } from "./types.ts";

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** A fault of form, with the way to its value. */
export interface FormFault extends Fault {
  readonly path: Path;
  /** The known field an unknown one was probably meant to be. */
  readonly meant?: string;
}

/** Keys the site builder would act on. A project file may not steer it. */
const builderKeys = new Set(
  "layout permalink pagination eleventyComputed eleventyExcludeFromCollections eleventyImport eleventyNavigation templateEngineOverride tags date draft override templateClass dynamicPermalink".split(
    " ",
  ),
);

/** Turn what the schema found into faults an author can mend: one for each field. */
export function explainIssues(issues: readonly Issue[], value: unknown): readonly FormFault[] {
  const found = issues.flatMap((issue) => explain(issue, [], value));
  const meant = new Set(found.map((fault) => fault.meant));
  const told = new Map<string, FormFault>();
  for (const fault of found) {
    if (!told.has(fault.field) && !meant.has(fault.field)) told.set(fault.field, fault);
  }
  return [...told.values()];
}

function explain(issue: Issue, outer: Path, value: unknown): readonly FormFault[] {
  const path = [...outer, ...issue.path];
  switch (issue.code) {
    case "unrecognized_keys":
      return issue.keys.map((key) => unknownKey(key, path, issue.message.split(" ")));
    case "invalid_union": {
      const branch = likeliest(issue.errors);
      if (branch !== null) return branch.flatMap((inner) => explain(inner, path, value));
      return [misfit(issue.message, path, value)];
    }
    case "invalid_key": {
      const { expected, fix } = untell(issue.issues[0]?.message ?? issue.message);
      const name = String(path.at(-1));
      const fault = `expected ${expected}, got ${describe(name)}`;
      return [{ path, field: dotted(path), fault, fix }];
    }
    default:
      return [misfit(issue.message, path, value)];
  }
}

/** The way of reading that fits best: not of quite another type, knowing most keys, and with the fewest faults. */
function likeliest(branches: readonly (readonly Issue[])[]): readonly Issue[] | null {
  const isAnother = (issue: Issue) => issue.path.length === 0 && issue.code !== "unrecognized_keys";
  const keysOf = (issue: Issue) => (issue.code === "unrecognized_keys" ? issue.keys.length : 0);
  const unknown = (issues: readonly Issue[]) =>
    issues.reduce((sum, issue) => sum + (issue.path.length === 0 ? keysOf(issue) : 0), 0);
  const count = (issues: readonly Issue[]) =>
    issues.reduce((sum, issue) => sum + (keysOf(issue) || 1), 0);
  const fitting = branches.filter((issues) => !issues.some(isAnother));
  return fitting.toSorted((a, b) => unknown(a) - unknown(b) || count(a) - count(b))[0] ?? null;
}

function unknownKey(key: string, path: Path, known: readonly string[]): FormFault {
  const own = [...path, key];
  const field = dotted(own);
  if (path.length === 0 && builderKeys.has(key)) {
    const fix = "Take it out; the layouts belong to the site, not to the project";
    return { path: own, field, fault: "is a key that a project file may not set", fix };
  }
  const nearest = nearestWord(key, known);
  const list = `Use one of ${known.join(", ")}`;
  const fault = "is not a key that is known here";
  if (nearest === null) return { path: own, field, fault, fix: list };
  const meant = dotted([...path, nearest]);
  return { path: own, field, fault, fix: `Write ${nearest} if that was meant`, meant };
}

function misfit(message: string, path: Path, value: unknown): FormFault {
  const { expected, fix } = untell(message);
  const got = valueAt(value, path);
  const fault =
    got === undefined
      ? `is missing: expected ${expected}`
      : `expected ${expected}, got ${describe(got)}`;
  return { path, field: dotted(path) || "front matter", fault, fix };
}

function valueAt(value: unknown, path: Path): unknown {
  let at = value;
  for (const key of path) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Readonly<Record<PropertyKey, unknown>>)[key];
  }
  return at;
}

function dotted(path: Path): string {
  return path.map(String).join(".");
}
