import type { Project } from "../project/types.ts";
import type { Closing } from "../seams/types.ts";
import type { Check } from "./types.ts";

/** A zip on hand that is shorter than the open run. */
export const checkZip: Check = ({ project, covers, format: { length } }) =>
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
        remedy: `Buy ${isChain(project, closing) ? "continuous chain, " : "one of "}${length(closing.buy)}${other}.`,
        source: "computed from the opening",
      },
    ];
  });

/** Is the zip longer than any that is sold ready made? */
function isChain({ stock }: Project, closing: Closing): boolean {
  const zip = stock.find(({ id }) => id === closing.stock);
  return zip?.kind !== "zip" || !zip.lengths.includes(closing.buy);
}
