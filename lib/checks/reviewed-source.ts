/** A source with the date its wording was last gone over, before its address. */
export function reviewedSource(source: string, reviewed: string): string {
  const note = `(wording reviewed ${reviewed})`;
  const at = source.search(/,\s*https?:/);
  return at < 0 ? `${source} ${note}` : `${source.slice(0, at)} ${note}${source.slice(at)}`;
}
