import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Effort } from "../packing/pack-strip.ts";

/** What the words after `npm run bench -- lay` ask for. */
export interface BenchArgs {
  /** Folder of data files, the kind's own folder inside it where there is one. */
  readonly data: string;
  readonly effort: Effort;
  readonly json: boolean;
}

/** Read `--data FOLDER --effort quick|full --json`; an error names what is not understood. */
export function readBenchArgs(words: readonly string[]): BenchArgs {
  let args: BenchArgs = { data: "../shared/data/packing", effort: "quick", json: false };
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (word === "--json") args = { ...args, json: true };
    else if (word === "--data") args = { ...args, data: valueAfter(words, i++) };
    else if (word === "--effort") args = { ...args, effort: readEffort(valueAfter(words, i++)) };
    else throw new Error(`bench does not know ${word}; it takes --data, --effort and --json`);
  }
  return args;
}

function valueAfter(words: readonly string[], at: number): string {
  const value = words[at + 1];
  if (value === undefined) throw new Error(`${words[at]} needs a word after it`);
  return value;
}

function readEffort(word: string): Effort {
  if (word === "quick" || word === "full") return word;
  throw new Error(`--effort is quick or full, not ${word}`);
}

/** All JSON sets in a folder, by name; a file may hold one set or a list of them. */
export function readBenchSets<T>(folder: string, own: string): readonly T[] {
  const names = (path: string): readonly string[] =>
    readdirSync(path).filter((name) => name.endsWith(".json"));
  const inside = readdirSync(folder).includes(own) ? join(folder, own) : folder;
  return [...names(inside)]
    .sort()
    .flatMap((name) => JSON.parse(readFileSync(join(inside, name), "utf8")) as T | T[]);
}

/** Run a bench line by line with its time, and print a table or JSON. */
export function runBench<T, R extends object>(
  sets: readonly T[],
  measure: (set: T) => R,
  line: (result: R, seconds: number) => string,
  close: (results: readonly R[]) => string,
  json: boolean,
): void {
  const results = sets.map((set) => {
    const start = performance.now();
    const result = measure(set);
    const seconds = (performance.now() - start) / 1000;
    if (!json) console.log(line(result, seconds));
    return { ...result, seconds };
  });
  console.log(json ? JSON.stringify(results, null, 2) : close(results));
}
