import type { Count } from "../plane/types.ts";

/** Do a piece of work for each, so many at once, begun in order; results stand in the order of the list. */
export async function runInTurn<T, R>(
  list: readonly T[],
  atOnce: Count,
  work: (each: T) => Promise<R>,
): Promise<readonly R[]> {
  const results: R[] = [];
  let next = 0;
  const worker = async (): Promise<void> => {
    while (next < list.length) {
      const i = next++;
      results[i] = await work(list[i]!);
    }
  };
  await Promise.all(Array.from({ length: Math.min(atOnce, list.length) }, worker));
  return results;
}
