import { chromium } from "playwright-core";
import type { Browser } from "playwright-core";

const quiet = [
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Start the browser at a path, out of sight. As root it must run without its sandbox. */
export function openBrowser(executablePath: string): Promise<Browser> {
  const isRoot = process.getuid?.() === 0;
  return chromium.launch({ executablePath, args: isRoot ? [...quiet, "--no-sandbox"] : quiet });
}
