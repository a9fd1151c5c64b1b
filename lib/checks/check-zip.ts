import type { Check } from "./types.ts";

/** A zip on hand that is shorter than the open run. */
export const checkZip: Check = ({ covers, format: { length } }) =>
  covers.flatMap(({ solid, closing, opening, seams }) => {
    if (closing === null || closing.kind !== "zip" || closing.short <= 0 || closing.have <= 0)
      return [];
    const instead = seams
      .filter((seam) => seam.state === "sewn" && !seam.isRing)
      .map((seam) => ({ id: seam.id, run: Math.max(...seam.length) }))
      .filter(({ run }) => run <= closing.have && 2 * run >= (opening?.needed ?? Infinity))
      .toSorted((one, next) => next.run - one.run)[0];
    const other =
      instead === undefined
        ? ""
        : `, or open seam ${instead.id} (${length(instead.run)}) instead, through which the foam goes too`;
    return [
      {
        id: `zip-short/${solid}`,
        severity: "note",
        about: `solid/${solid}`,
        message:
          `The opening runs ${length(closing.run)} and the longest zip on hand is ${length(closing.have)}: ` +
          `it is ${length(closing.short)} too short.`,
        remedy: `Buy one of ${length(closing.buy)}${other}.`,
        source: "computed from the opening",
      },
    ];
  });
