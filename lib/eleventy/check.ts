import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { lintContent } from "./lint-content.ts";
import { openSite } from "./open-site.ts";
import { runCommand } from "./run-command.ts";

const source = ["lib", "tests"];
const eslint = ["-c", "tests/eslint.config.js", ...source];

/** What is checked, with the tool that does it. The text of the projects comes last. */
const tools: readonly (readonly [name: string, tool: string, words: readonly string[]])[] = [
  ["types", "tsc", ["-p", "."]],
  ["lint", "eslint", eslint],
  ["format", "prettier", ["--check", "--log-level", "warn", "lib/**/*.ts", "tests/**/*.ts"]],
  ["import order", "vitest", ["run", "--config", "tests/vitest.config.ts", "tests/flow.test.ts"]],
];

/** `npm run check`: types, lint, format, import order, and the wording of every project. */
await runCommand(() => {
  const failed = tools.filter(([name, tool, words]) => !run(name, tool, words)).length;
  const { notes, faults } = lintContent(openSite());
  [...faults, ...notes].forEach((line) => console.log(line));
  console.log(`text: ${notes.length === 0 ? "ok" : `${notes.length} to look at`}`);
  return Promise.resolve(failed > 0 || faults.length > 0 ? 1 : 0);
});

/** Run a tool of this project; its words are shown only where it finds something. */
function run(name: string, tool: string, words: readonly string[]): boolean {
  const shell = process.platform === "win32";
  const result = spawnSync(join("node_modules", ".bin", tool), words, { encoding: "utf8", shell });
  const isGood = result.status === 0;
  if (!isGood) process.stdout.write(`${result.stdout}${result.stderr}`);
  console.log(`${name}: ${isGood ? "ok" : "at fault"}`);
  return isGood;
}
