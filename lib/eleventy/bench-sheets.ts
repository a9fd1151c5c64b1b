import { type SheetBench, benchSheetSet } from "../packing/bench-sheets.ts";
import { readBenchArgs, readBenchSets, runBench } from "./bench-data.ts";
import { sheetSetShape } from "./bench-shapes.ts";

/** `npm run bench -- sheets`: value cut right across from each sheet against the known optimum. */
export function benchSheets(words: readonly string[]): Promise<number> {
  const { data, json } = readBenchArgs(words);
  const code = runBench(readBenchSets(data, "rect", sheetSetShape), {
    measure: benchSheetSet,
    heading: "set        kinds     value     bound   optimum   time",
    line: (row, seconds) =>
      `${row.name.padEnd(10)} ${String(row.kinds).padStart(5)}` +
      [row.value, row.bound, row.optimum ?? "–"].map((each) => String(each).padStart(10)).join("") +
      `${seconds.toFixed(2).padStart(7)} s`,
    close: closeWith,
    json,
  });
  return Promise.resolve(code);
}

function closeWith(rows: readonly SheetBench[]): string {
  const known = rows.filter(({ optimum }) => optimum !== null);
  const reached = known.filter(({ value, optimum }) => value === optimum).length;
  const proven = rows.filter(({ value, bound }) => value === bound).length;
  return `${reached} of ${known.length} at the known optimum, ${proven} of ${rows.length} proved here`;
}
