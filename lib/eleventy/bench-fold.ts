import { benchFold as foldMany, type FoldFault } from "../panels/bench-fold.ts";
import { readCount } from "./read-count.ts";

const faults: readonly FoldFault[] = ["crash", "area", "seam", "refold"];

/** `npm run bench -- fold [--runs N] [--seed N]`: cover random forms and fold the covers back up. */
export function benchFold(words: readonly string[]): Promise<void> {
  const [runs, seed] = [readCount(words, "--runs", 10_000), readCount(words, "--seed", 1)];
  const start = performance.now();
  const { failures, worst } = foldMany(runs, seed);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  for (const { seed: at, fault, detail, blocks } of failures) {
    console.log(`seed ${at}: ${fault}, ${detail}`);
    blocks.forEach((block) => console.log(`  ${JSON.stringify(block)}`));
  }
  const counts = faults.map((fault) => {
    const count = failures.filter((one) => one.fault === fault).length;
    return `${count} ${fault}`;
  });
  console.log(`${runs} forms in ${seconds} s: failures ${counts.join(", ")}`);
  console.log(`largest gap of the others ${worst.toExponential(1)} mm`);
  if (failures.length > 0) {
    return Promise.reject(new Error(`${failures.length} of ${runs} forms do not come back`));
  }
  return Promise.resolve();
}
