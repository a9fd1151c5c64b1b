import { execFileSync, spawn } from "node:child_process";
import type { ChildProcess } from "node:child_process";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { globSync } from "tinyglobby";
import { afterAll, describe, expect, test } from "vitest";
import { makeTempSite } from "../fixtures/temp-site.ts";

const pad = (title: string): string => `---
title: ${title}
units: cm
stock:
  print: {kind: fabric, width: 140, have: 200}
pieces:
  body: {stock: print, size: [40, 30], seamAllowance: 1}
---
`;
const names = ["banner", "cloth", "curtain", "towel"];
const folder = makeTempSite(Object.fromEntries(names.map((name) => [`${name}.md`, pad(name)])));
afterAll(() => folder.remove());

// A place of its own for temporary files shows which browsers are this run's.
const temporary = resolve(folder.content, "../temporary");
mkdirSync(temporary);

const browsers = (): readonly string[] =>
  execFileSync("ps", ["-A", "-ww", "-o", "pid=,args="], { encoding: "utf8" })
    .split("\n")
    .filter((line) => line.includes(`--user-data-dir=${temporary}`));

function startPrinting(): { readonly run: ChildProcess; readonly said: () => string } {
  const script = "tests/fixtures/print-folder.ts";
  const run = spawn(process.execPath, ["--import", "tsx", script, folder.content, folder.output], {
    env: { ...process.env, TMPDIR: temporary },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let text = "";
  run.stdout!.on("data", (chunk: Buffer) => (text += chunk.toString()));
  run.stderr!.on("data", (chunk: Buffer) => (text += chunk.toString()));
  return { run, said: () => text };
}

/** Wait until a thing is so, looking again now and then. */
async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((done) => setTimeout(done, 50));
}

const isWhole = (file: string): boolean => {
  const bytes = readFileSync(file);
  return bytes.subarray(0, 5).toString() === "%PDF-" && bytes.includes("%%EOF", -32);
};

// Printing that was stopped once left browsers behind, which ate the memory of the next run.
describe.skipIf(process.platform === "win32")("printing that is stopped half way", () => {
  test.each([
    ["SIGINT", 130],
    ["SIGTERM", 143],
  ] as const)(
    "by %s keeps what is done, leaves nothing half done and no browser",
    async (signal, code) => {
      const { run, said } = startPrinting();
      const left = new Promise<number | null>((done) => run.once("exit", done));
      await until(
        () => (/\[1\/8\]/.test(said()) && browsers().length > 0) || run.exitCode !== null,
      );
      const done = [...said().matchAll(/\] (\S+\.pdf): \d+ page/g)].map((match) => match[1]!);
      expect(done.length, said()).toBeGreaterThan(0);
      expect(browsers().length).toBeGreaterThan(0);
      run.kill(signal);
      expect(await left).toBe(code);
      expect(said()).toContain("What was printed before is kept");
      await until(() => browsers().length === 0);
      for (const file of done) expect(isWhole(file), file).toBe(true);
      const prints = globSync("**/*.pdf", { cwd: folder.output });
      expect(prints.length).toBeGreaterThanOrEqual(done.length);
      expect(prints.length).toBeLessThan(8);
      expect(prints.filter((file) => !isWhole(join(folder.output, file)))).toEqual([]);
      expect(globSync("**/*.part", { cwd: folder.output, dot: true })).toEqual([]);
      for (const name of names) {
        expect(existsSync(join(folder.output, name, "print/index.html"))).toBe(true);
      }
    },
  );
});
