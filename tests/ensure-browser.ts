import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { findBrowser } from "../lib/eleventy/find-browser.ts";

/** A browser that comes inside an npm package, for machines without one and without apt. */
const packaged = "@sparticuz/chromium@153.0.0";

/**
 * Path of a browser: an installed Chrome, Edge or Chromium; else Debian's, fetched with apt by root;
 * else one from npm, kept in `.cache`. Throws where none can be had: print tests are never skipped.
 */
export function ensureBrowser(): string {
  const found = findBrowser() ?? installWithApt() ?? installWithNpm();
  if (found === null) throw new Error("No browser could be found or fetched for the print tests");
  return found;
}

function installWithApt(): string | null {
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return null;
  console.log("No browser found: installing Chromium with apt-get");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const apt = (...words: readonly string[]): boolean => succeeds("apt-get", words, env);
  apt("update", "-q") && apt("install", "-y", "-q", "--no-install-recommends", "chromium");
  return findBrowser();
}

function installWithNpm(): string | null {
  const folder = resolve(".cache/browser");
  const note = resolve(folder, "path.txt");
  if (existsSync(note) && existsSync(readFileSync(note, "utf8"))) return readFileSync(note, "utf8");
  console.log(`No browser found: fetching ${packaged} with npm`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(resolve(folder, "package.json"), '{"private":true,"type":"module"}\n');
  const isFetched = succeeds("npm", [
    "install",
    "--no-audit",
    "--no-fund",
    "--prefix",
    folder,
    packaged,
  ]);
  if (!isFetched) return null;
  // The package unpacks its browser when it is first asked where that is.
  const ask =
    'import("@sparticuz/chromium").then(async (m) => process.stdout.write(await m.default.executablePath()))';
  const path = execFileSync(process.execPath, ["--input-type=module", "-e", ask], {
    cwd: folder,
    encoding: "utf8",
  });
  writeFileSync(note, path);
  return existsSync(path) ? path : null;
}

function succeeds(command: string, words: readonly string[], env = process.env): boolean {
  try {
    execFileSync(command, words, { env, stdio: ["ignore", "inherit", "inherit"] });
    return true;
  } catch {
    return false;
  }
}
