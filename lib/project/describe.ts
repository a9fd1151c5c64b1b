/** Say in a few words what an author wrote, for "got …". */
export function describe(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object") return "a map of keys and values";
  if (typeof value === "string") return JSON.stringify(shorten(value));
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  return "something else";
}

/** At most 60 characters, with dots for the rest. */
export function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** "a", "a and b", "a, b and c". */
export function inWords(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}
