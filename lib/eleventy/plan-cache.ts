import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import type { Plan } from "../booklet/types.ts";
import type { Figure } from "../drawing/types.ts";
import type { Project } from "../project/types.ts";
import { programVersion } from "./program-version.ts";

/** Plans and drawings of earlier builds, by what they were made from. */
export interface PlanCache {
  /** Whether an entry stands there, good or not: `open` reads it. */
  readonly has: (project: Project) => boolean;
  readonly open: (project: Project) => CachedPlan;
}

/** What is known of one project, and what is added to it. */
export interface CachedPlan {
  readonly plan: Plan | null;
  readonly figures: ReadonlyMap<string, Figure>;
  /** Keep a plan with its drawings, unless nothing is new. */
  readonly keep: (plan: Plan, figures: ReadonlyMap<string, Figure>) => void;
}

interface Entry {
  readonly plan: Plan;
  readonly figures: readonly (readonly [key: string, figure: Figure])[];
}

/** Entries beyond this many are cleared away, the oldest first. @source our choice */
const mostEntries = 100;

/**
 * A cache in a folder, one file a project, named by a digest of the project and the program. Files
 * are put in place whole; one that cannot be read, or is not what was written, counts as absent.
 */
export function diskCache(folder: string): PlanCache {
  const fileOf = (project: Project): string =>
    join(folder, `${digest(`${programVersion()}\n${JSON.stringify(project)}`)}.json`);
  return {
    has: (project) => existsSync(fileOf(project)),
    open: (project) => {
      const file = fileOf(project);
      const found = readEntry(file);
      return {
        plan: found?.plan ?? null,
        figures: new Map(found?.figures ?? []),
        keep: (plan, figures) => {
          if (found !== null && figures.size === found.figures.length) return;
          writeEntry(folder, file, { plan, figures: [...figures].sort(byKey) });
        },
      };
    },
  };
}

/** Keeps nothing: every plan is computed anew. */
export const noCache: PlanCache = {
  has: () => false,
  open: () => ({ plan: null, figures: new Map(), keep: () => undefined }),
};

/**
 * A value as it comes back from the cache. Fresh values go through it too, so that a page cannot tell
 * a fresh plan from a kept one: a minus nought, say, comes back as a nought.
 */
export const asKept = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

const digest = (text: string): string => createHash("sha256").update(text).digest("hex");

const byKey = ([a]: readonly [string, Figure], [b]: readonly [string, Figure]): number =>
  a < b ? -1 : a > b ? 1 : 0;

/** The first line is the digest of the rest. */
function readEntry(file: string): Entry | null {
  try {
    const text = readFileSync(file, "utf8");
    const end = text.indexOf("\n");
    const body = text.slice(end + 1);
    return digest(body) === text.slice(0, end) ? (JSON.parse(body) as Entry) : null;
  } catch {
    return null;
  }
}

/** A cache that cannot be written is no fault: the next build computes again. */
function writeEntry(folder: string, file: string, entry: Entry): void {
  try {
    mkdirSync(folder, { recursive: true });
    const body = JSON.stringify(entry);
    const fresh = `${file}.${process.pid}.part`;
    writeFileSync(fresh, `${digest(body)}\n${body}`);
    renameSync(fresh, file);
    clearOld(folder);
  } catch (error) {
    if (process.env["DEBUG"] !== undefined) console.error(error);
  }
}

function clearOld(folder: string): void {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .map((name) => join(folder, name));
  if (files.length <= mostEntries) return;
  const byAge = files.toSorted((a, b) => statSync(b).mtimeMs - statSync(a).mtimeMs);
  for (const old of byAge.slice(mostEntries)) rmSync(old, { force: true });
}
