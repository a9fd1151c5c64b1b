import {
  benchFold as foldMany,
  type FoldBench,
  type FoldFailure,
  type FoldFault,
} from "../panels/bench-fold.ts";
import { readCounts } from "./read-counts.ts";

const faults: readonly FoldFault[] = ["crash", "area", "seam", "refold"];

/** `npm run bench -- fold [--runs N] [--seed N]`: cover random forms and fold the covers back up. */
export function benchFold(words: readonly string[]): Promise<void> {
  const { runs, seed } = readCounts(words, { runs: 10_000, seed: 1 });
  const start = performance.now();
  const report = ({ runs: done, failures, worst }: FoldBench) => {
    const seconds = ((performance.now() - start) / 1000).toFixed(0);
    const counts = faults.map(
      (fault) => `${failures.filter((one) => one.fault === fault).length} ${fault}`,
    );
    console.log(`${done} forms in ${seconds} s: failures ${counts.join(", ")}`);
    console.log(`  largest gap of the others ${worst.toExponential(1)} mm`);
  };
  const folded = foldMany(runs, seed, { onForms: report, onFailure: name });
  report(folded);
  const failed = folded.failures.length;
  if (failed > 0) return Promise.reject(new Error(`${failed} of ${runs} forms do not come back`));
  return Promise.resolve();
}

function name({ seed, fault, detail, blocks }: FoldFailure): void {
  console.log(`seed ${seed}: ${fault}, ${detail}`);
  blocks.forEach((block) => console.log(`  ${JSON.stringify(block)}`));
}
