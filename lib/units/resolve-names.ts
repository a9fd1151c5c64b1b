import type { Mm } from "../plane/types.ts";
import { misread } from "./misread.ts";
import { namesIn } from "./names-in.ts";
import { parseLength } from "./parse-length.ts";
import type { Misreading, Unit } from "./types.ts";

export interface ResolvedNames {
  /** In the order written; null where the size could not be read. */
  readonly sizes: ReadonlyMap<string, Mm | null>;
  readonly faults: ReadonlyMap<string, Misreading>;
}

const longestChain = 1000; // far beyond any project, well within the stack

/**
 * Work out named sizes that may be formulas over one another, in any order.
 *
 * A ring of names that need each other is a fault of each name on the ring, told once at the first.
 */
export function resolveNames(
  written: ReadonlyMap<string, string | number>,
  units: Unit,
): ResolvedNames {
  // Filled in the order written, so that faults list the names in that order.
  const sizes = new Map<string, Mm | null>([...written.keys()].map((name) => [name, null]));
  const known = new Set(written.keys());
  const done = new Set<string>();
  const finish = (name: string, size: Mm | null): void => {
    sizes.set(name, size);
    done.add(name);
  };
  const faults = new Map<string, Misreading>();

  const resolve = (name: string, path: readonly string[]): void => {
    const value = written.get(name);
    if (done.has(name) || value === undefined) return;
    const from = path.indexOf(name);
    // Is it on the path that led here? Then the names need one another.
    if (from >= 0) {
      const ring = path.slice(from);
      const told = [...written.keys()].find((key) => ring.includes(key)) ?? name;
      for (const each of ring) finish(each, null);
      faults.set(
        told,
        misread(
          `${[...ring, name].join(" needs ")}, which goes round in a circle`,
          "Give one of them a size of its own",
        ),
      );
      return;
    }
    if (path.length >= longestChain) {
      finish(name, null);
      faults.set(
        name,
        misread("it stands at the end of a chain of 1000 names", "Shorten the chain"),
      );
      return;
    }
    for (const needed of namesIn(value, known)) resolve(needed, [...path, name]);
    if (done.has(name)) return;
    const reading = parseLength(value, { units, names: sizes });
    finish(name, reading.ok ? reading.value : null);
    if (!reading.ok && !reading.isFollowOn) faults.set(name, reading);
  };

  for (const name of written.keys()) resolve(name, []);
  return { sizes, faults };
}
