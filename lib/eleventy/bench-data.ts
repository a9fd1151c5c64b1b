import { readFileSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import type { z } from "zod";
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

/** Sets that can be measured, and a line for each file or set that cannot. */
export interface BenchSets<T> {
  readonly sets: readonly T[];
  readonly faults: readonly string[];
}

/**
 * All JSON sets in a folder, by name of file; a file may hold one set or a list of them, and a set
 * without a name takes that of its file. What is not of the shape is left out and named.
 */
export function readBenchSets<T>(folder: string, own: string, shape: z.ZodType<T>): BenchSets<T> {
  if (!isFolder(folder)) throw new Error(`--data ${folder}: there is no such folder`);
  const inside = isFolder(join(folder, own)) ? join(folder, own) : folder;
  const files = readdirSync(inside).filter((name) => name.endsWith(".json"));
  if (files.length === 0) throw new Error(`--data ${inside}: there is no .json file in it`);
  const read = files.toSorted().map((file) => readFile(join(inside, file), file, shape));
  const sets = read.flatMap((each) => each.sets);
  const faults = read.flatMap((each) => each.faults);
  const none = sets.length === 0 ? [`--data ${inside}: no set of this kind in it`] : [];
  return { sets, faults: [...faults, ...none] };
}

const isFolder = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;

function readFile<T>(path: string, file: string, shape: z.ZodType<T>): BenchSets<T> {
  let held: unknown;
  try {
    held = JSON.parse(readFileSync(path, "utf8"));
  } catch (fault) {
    return { sets: [], faults: [`${file}: cannot be read as JSON (${firstLine(fault)})`] };
  }
  const name = file.replace(/\.json$/, "");
  const sets: T[] = [];
  const faults: string[] = [];
  const given: readonly unknown[] = Array.isArray(held) ? held : [held];
  given.forEach((one, i) => {
    const which = given.length === 1 ? file : `${file}, set ${i + 1}`;
    const isNamed = typeof one === "object" && one !== null;
    const parsed = shape.safeParse(isNamed ? { name, ...one } : one);
    if (parsed.success) sets.push(parsed.data);
    else faults.push(`${which}: ${sayIssue(parsed.error.issues[0])}`);
  });
  if (given.length === 0) faults.push(`${file}: holds no set`);
  return { sets, faults };
}

const firstLine = (fault: unknown): string =>
  (fault instanceof Error ? fault.message : String(fault)).split("\n")[0]!;

function sayIssue(issue: z.core.$ZodIssue | undefined): string {
  const at = issue?.path.map((step) => (typeof step === "number" ? step + 1 : String(step)));
  const where = at === undefined || at.length === 0 ? "" : `${at.join(" ")}: `;
  return `${where}${(issue?.message ?? "not such a set").replace("Invalid input: ", "")}`;
}

/** How one bench measures its sets and says so. */
export interface BenchWork<T, R> {
  readonly measure: (set: T) => R;
  readonly heading: string;
  readonly line: (result: R, seconds: number) => string;
  readonly close: (results: readonly R[]) => string;
  readonly json: boolean;
}

/**
 * Measure set by set and print a table, or JSON alone. What cannot be measured is left out with a line
 * on the error channel, and the others go on.
 *
 * @returns the exit code: 1 when anything was left out
 */
export function runBench<T extends { readonly name: string }, R extends object>(
  { sets, faults }: BenchSets<T>,
  { measure, heading, line, close, json }: BenchWork<T, R>,
): number {
  faults.forEach(sayLeftOut);
  if (!json && sets.length > 0) console.log(heading);
  let isWhole = faults.length === 0;
  const results = sets.flatMap((set) => {
    const start = performance.now();
    try {
      const result = measure(set);
      const seconds = (performance.now() - start) / 1000;
      if (!json) console.log(line(result, seconds));
      return [{ ...result, seconds }];
    } catch (fault) {
      isWhole = false;
      sayLeftOut(`${set.name}: cannot be measured (${firstLine(fault)})`);
      return [];
    }
  });
  if (json) console.log(JSON.stringify(results, null, 2));
  else if (results.length > 0) console.log(close(results));
  return isWhole ? 0 : 1;
}

const sayLeftOut = (fault: string): void => console.error(`${fault}; it is left out`);
