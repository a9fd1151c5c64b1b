import type { Count, Mm } from "../plane/types.ts";

const tolerance: Mm = 1e-6;

interface EvenRule<T> {
  readonly kind: (item: T) => string;
  readonly at: (item: T) => Mm;
  readonly fewest: Count;
}

/**
 * Items in order, those of one kind that follow at even steps together: a table then says "every 75 cm"
 * in one row in the place of forty.
 *
 * @param kind what has to agree
 * @param at where an item lies
 * @param fewest shorter runs are told one by one
 */
export function evenRuns<T>(
  items: readonly T[],
  { kind, at, fewest }: EvenRule<T>,
): readonly (readonly [T, ...T[]])[] {
  const runs: [T, ...T[]][] = [];
  for (const item of items) {
    const run = runs.at(-1);
    if (run !== undefined && goesOn(run, item, { kind, at })) run.push(item);
    else runs.push([item]);
  }
  return runs.flatMap((run) =>
    run.length < fewest ? run.map((item): [T, ...T[]] => [item]) : [run],
  );
}

function goesOn<T>(
  run: readonly [T, ...T[]],
  item: T,
  { kind, at }: Pick<EvenRule<T>, "kind" | "at">,
): boolean {
  const last = run.at(-1)!;
  if (kind(last) !== kind(item)) return false;
  const before = run.at(-2);
  return (
    before === undefined || Math.abs(at(item) - at(last) - (at(last) - at(before))) < tolerance
  );
}
