import { existsSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { runCommand } from "./run-command.ts";

const folder = dirname(fileURLToPath(import.meta.url));
const helpers: readonly string[] = ["data"];

/** Benches there are: each `bench-<name>.ts` beside this file exports `bench<Name>(words)`. */
const names = readdirSync(folder)
  .flatMap((file) => /^bench-(\w+)\.ts$/.exec(file)?.[1] ?? [])
  .filter((name) => !helpers.includes(name))
  .toSorted();

/** `npm run bench -- <name> [words]`: measure one part of the program against open data. */
await runCommand(async () => {
  const [name = "", ...words] = process.argv.slice(2);
  const file = join(folder, `bench-${name}.ts`);
  if (!names.includes(name) || !existsSync(file)) {
    throw new Error(`Usage: npm run bench -- ${names.join("|")} [words for it]`);
  }
  const exports = (await import(pathToFileURL(file).href)) as Record<string, unknown>;
  const bench = exports[`bench${name.charAt(0).toUpperCase()}${name.slice(1)}`];
  if (typeof bench !== "function") throw new Error(`bench-${name}.ts exports no bench`);
  return (await (bench as (words: readonly string[]) => Promise<number | void>)(words)) ?? 0;
});
