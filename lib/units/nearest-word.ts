import { distance } from "fastest-levenshtein";

/**
 * The known word most like the one written, or null when none is near.
 *
 * Near means at most two letters in five differ (at least one, so that short words still help);
 * a word that only differs in capitals or hyphens is always near. The earlier wins a tie.
 */
export function nearestWord(written: string, known: readonly string[]): string | null {
  const plain = (word: string) => word.toLowerCase().replace(/[-_ ]/g, "");
  let best: { readonly word: string; readonly far: number } | null = null;
  for (const word of known) {
    const far = distance(plain(written), plain(word));
    const limit = Math.max(1, Math.round(word.length * 0.4));
    if (far <= limit && (best === null || far < best.far)) best = { word, far };
  }
  return best?.word ?? null;
}
