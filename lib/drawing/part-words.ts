/** "seat/left-arm" in words: the form it belongs to is left out, hyphens open. */
export function partWords(part: string): string {
  return (part.split("/").pop() ?? part).replaceAll("-", " ");
}
