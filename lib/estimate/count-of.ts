/** "1 slab", "2 slabs", "no slabs": a count and its noun. */
export function countOf(count: number, noun: string, plural = `${noun}s`): string {
  if (count === 0) return `no ${plural}`;
  return `${count} ${count === 1 ? noun : plural}`;
}
