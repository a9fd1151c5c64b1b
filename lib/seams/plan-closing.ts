import type { Count, Mm } from "../plane/types.ts";
import type { ClosingSpec, ZipStock } from "../project/types.ts";
import type { Closing } from "./types.ts";

/** Continuous chain is cut longer by this, for the two ends. @source common practice, no source */
const chainEnds: Mm = 50;
/** One tie for about every hand's width and a half. @source our choice */
const tieSpacing: Mm = 150;

/**
 * What closes the opening. A zip is as long as the open run or the next length sold; the surplus is
 * cut off behind a new stop. Hook-and-loop is as long as the run.
 *
 * @param format prints a length in the author's unit, for the basis
 */
export function planClosing(
  { kind, stock }: ClosingSpec,
  run: Mm,
  zips: ZipStock | null,
  format: (length: Mm) => string,
): Closing {
  switch (kind) {
    case "zip":
      return { kind, stock, run, ...chooseZip(run, zips, format) };
    case "hook-and-loop":
      return {
        kind,
        stock,
        run,
        buy: run,
        have: 0,
        short: 0,
        basis: `As long as the opening, ${format(run)}.`,
      };
    case "ties": {
      const pairs = tiePairs(run);
      return {
        kind,
        stock,
        run,
        buy: 0,
        have: 0,
        short: 0,
        basis: `${pairs} pairs of ties over an opening of ${format(run)}.`,
      };
    }
    case "hand-sewn":
      return {
        kind,
        stock,
        run,
        buy: 0,
        have: 0,
        short: 0,
        basis: `${format(run)} closed by hand with ladder stitch.`,
      };
  }
}

/** Pairs of ties that an opening takes: at least two. */
export function tiePairs(run: Mm): Count {
  return Math.max(2, Math.ceil(run / tieSpacing));
}

function chooseZip(
  run: Mm,
  zips: ZipStock | null,
  format: (length: Mm) => string,
): Pick<Closing, "buy" | "have" | "short" | "basis"> {
  const onHand = [...(zips?.have ?? [])].sort((a, b) => a - b);
  const fitting = onHand.find((length) => length >= run - 1e-6);
  if (fitting !== undefined) {
    return {
      buy: 0,
      have: fitting,
      short: 0,
      basis: `The ${format(fitting)} zip on hand covers the opening of ${format(run)}.`,
    };
  }
  const have = onHand.at(-1) ?? 0;
  const short = have === 0 ? 0 : run - have;
  const sold = zips?.lengths.find((length) => length >= run - 1e-6);
  if (sold !== undefined) {
    return {
      buy: sold,
      have,
      short,
      basis: `Opening ${format(run)}; ${format(sold)} is the next length sold.`,
    };
  }
  const chain = run + chainEnds;
  const why =
    (zips?.lengths.length ?? 0) > 0
      ? "longer than any length sold: use continuous chain"
      : "continuous chain";
  return {
    buy: chain,
    have,
    short,
    basis: `Opening ${format(run)} and ${format(chainEnds)} for the ends; ${why}.`,
  };
}
