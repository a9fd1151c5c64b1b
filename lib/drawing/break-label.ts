/** Words of a label in two lines as even as can be; a single word stays whole. */
export function breakLabel(text: string): readonly string[] {
  const words = text.split(" ");
  const breaks = words.slice(1).map((_, i) => [words.slice(0, i + 1), words.slice(i + 1)] as const);
  const widest = (lines: readonly (readonly string[])[]): number =>
    Math.max(...lines.map((line) => line.join(" ").length));
  const [first, ...rest] = breaks;
  if (first === undefined) return [text];
  const best = rest.reduce((a, b) => (widest(b) < widest(a) ? b : a), first);
  return best.map((line) => line.join(" "));
}
