import { type LayBench, benchLaySet, compareBottomLeft } from "../packing/bench-lay.ts";
import { checkLaySet } from "./check-lay-set.ts";
import { readBenchArgs, readBenchSets, runBench } from "./bench-data.ts";
import { laySetShape } from "./bench-shapes.ts";

const percent = (share: number | null): string =>
  share === null ? "     –" : `${(100 * share).toFixed(1).padStart(5)}%`;

/** `npm run bench -- lay`: density of each irregular set against the best known and bottom-left fill. */
export function benchLay(words: readonly string[]): Promise<number> {
  const { data, effort, json } = readBenchArgs(words);
  const { sets, faults } = readBenchSets(data, "irregular", laySetShape);
  const unfit = sets.map(checkLaySet);
  const fit = {
    sets: sets.filter((_, i) => unfit[i] === null),
    faults: [...faults, ...unfit.filter((fault) => fault !== null)],
  };
  const code = runBench(fit, {
    measure: (set) => {
      const start = { cpu: process.cpuUsage(), at: performance.now() };
      const laid = benchLaySet(set, effort);
      const search = (performance.now() - start.at) / 1000;
      const cpu = process.cpuUsage(start.cpu).user / 1e6;
      return { ...compareBottomLeft(set, laid), search, cpu };
    },
    heading: "set        pieces density  of best  of bottom-left  fault      time       cpu",
    line: (row) =>
      `${row.name.padEnd(10)} ${String(row.pieces).padStart(6)} ${row.density.toFixed(2).padStart(7)}` +
      `  ${percent(row.ofBest)}  ${percent(row.ofBottomLeft).padStart(14)}` +
      `  ${row.fault.toExponential(1)}  ${row.search.toFixed(2).padStart(6)} s  ${row.cpu.toFixed(2).padStart(6)} s`,
    close: closeWith,
    json,
  });
  return Promise.resolve(code);
}

function closeWith(rows: readonly LayBench[]): string {
  const known = rows.flatMap(({ ofBest }) => (ofBest === null ? [] : [ofBest]));
  if (known.length === 0) return "no best known densities to compare with";
  const mean = known.reduce((sum, share) => sum + share, 0) / known.length;
  return `mean ${percent(mean)} of the best known, least ${percent(Math.min(...known))}`;
}
