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

/**
 * Work out named sizes that may be formulas over one another, in any order.
 *
 * A ring of names that need each other is a fault of each name on the ring, told once at the first.
 */
export function resolveNames(
  written: ReadonlyMap<string, string | number>,
  units: Unit,
): ResolvedNames {
  const sizes = new Map<string, Mm | null>();
  const faults = new Map<string, Misreading>();

  const resolve = (name: string, path: readonly string[]): void => {
    const value = written.get(name);
    if (sizes.has(name) || value === undefined) return;
    const from = path.indexOf(name);
    // Is it on the path that led here? Then the names need one another.
    if (from >= 0) {
      const ring = path.slice(from);
      const told = [...written.keys()].find((key) => ring.includes(key)) ?? name;
      for (const each of ring) sizes.set(each, null);
      faults.set(
        told,
        misread(
          `${[...ring, name].join(" needs ")}, which goes round in a circle`,
          "Give one of them a size of its own",
        ),
      );
      return;
    }
    for (const needed of namesIn(value)) resolve(needed, [...path, name]);
    if (sizes.has(name)) return;
    const unknownYet = new Map([...written.keys()].map((key) => [key, sizes.get(key) ?? null]));
    const reading = parseLength(value, { units, names: unknownYet });
    sizes.set(name, reading.ok ? reading.value : null);
    if (!reading.ok && !reading.isFollowOn) faults.set(name, reading);
  };

  for (const name of written.keys()) resolve(name, []);
  const ordered = [...written.keys()].map((name) => [name, sizes.get(name) ?? null] as const);
  return { sizes: new Map(ordered), faults };
}
