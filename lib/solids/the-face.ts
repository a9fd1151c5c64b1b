/** A face in a sentence: "the left side", but "side 3", which has a number for an article. */
export const theFace = (label: string): string =>
  /^side \d+$/.test(label) ? label : `the ${label}`;
