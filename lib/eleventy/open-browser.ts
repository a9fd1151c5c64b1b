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

const running = new Set<Browser>();

/** Start the browser at a path, out of sight. As root it must run without its sandbox. */
export async function openBrowser(executablePath: string): Promise<Browser> {
  const isRoot = process.getuid?.() === 0;
  const browser = await chromium.launch({
    executablePath,
    args: isRoot ? [...quiet, "--no-sandbox"] : quiet,
    // Our own commands close every browser before they leave.
    handleSIGINT: false,
    handleSIGTERM: false,
  });
  running.add(browser);
  browser.on("disconnected", () => running.delete(browser));
  return browser;
}

/** Close every browser that is still open. */
export async function closeBrowsers(): Promise<void> {
  await Promise.allSettled([...running].map((browser) => browser.close()));
}
