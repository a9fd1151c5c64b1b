/** A face's name within a sentence: "the back", but "side 3" and "front 2", which are counted. */
export const theFace = (label: string): string => (/\d$/.test(label) ? label : `the ${label}`);
