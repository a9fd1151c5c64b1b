/** A stretch of text set in one way. */
export interface TextRun {
  readonly text: string;
  readonly isFraction: boolean;
}

const FRACTION = /(\d+)[/⁄](\d+)/g;

/** Cut text into plain runs and fractions, so that `24 1/2` can be set as a fraction. */
export function textRuns(text: string): TextRun[] {
  const runs: TextRun[] = [];
  let done = 0;
  for (const match of text.matchAll(FRACTION)) {
    // The fraction follows its whole number without a gap: small figures part them well enough.
    const before = text.slice(done, match.index).replace(/(\d) $/, "$1");
    if (before) runs.push({ text: before, isFraction: false });
    runs.push({ text: `${match[1]}⁄${match[2]}`, isFraction: true });
    done = match.index + match[0].length;
  }
  const rest = text.slice(done);
  if (rest) runs.push({ text: rest, isFraction: false });
  return runs;
}
