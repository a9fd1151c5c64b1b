import { type BoardBench, benchBoardSet } from "../packing/bench-boards.ts";
import { readBenchArgs, readBenchSets, runBench } from "./bench-data.ts";
import { boardSetShape } from "./bench-shapes.ts";

/** `npm run bench -- boards`: boards used for each set of lengths against bound and best known. */
export function benchBoards(words: readonly string[]): Promise<number> {
  const { data, json } = readBenchArgs(words);
  const code = runBench(readBenchSets(data, "1d", boardSetShape), {
    measure: (set) => benchBoardSet(set),
    heading: "set           pieces  boards   bound  first fit  best known   time",
    line: (row, seconds) =>
      `${row.name.padEnd(13)} ${String(row.pieces).padStart(6)}` +
      [row.boards, row.bound].map((each) => String(each).padStart(8)).join("") +
      String(row.firstFit).padStart(11) +
      `${row.bestKnown ?? "–"}${row.isProven ? " proven" : ""}`.padStart(12) +
      `${seconds.toFixed(2).padStart(7)} s`,
    close: closeWith,
    json,
  });
  return Promise.resolve(code);
}

function closeWith(rows: readonly BoardBench[]): string {
  const proven = rows.filter(({ isProven }) => isProven);
  const reached = proven.filter(({ boards, bestKnown }) => boards === bestKnown).length;
  const shown = rows.filter(({ boards, bound }) => boards === bound).length;
  return `${reached} of ${proven.length} proven sets reached, ${shown} of ${rows.length} proved here`;
}
