import { closeBrowsers } from "./open-browser.ts";

/** Exit codes of a shell: 128 and the number of the signal. @source POSIX, signals 2 and 15 */
const codes = { SIGINT: 130, SIGTERM: 143 } as const;

/**
 * On Ctrl-C, or when told to end, close every browser and leave. What was printed stays: each PDF is
 * put in place whole, so that there is none half done.
 */
export function stopGently(): void {
  for (const signal of ["SIGINT", "SIGTERM"] as const) {
    process.once(signal, () => {
      console.log("Stopped. What was printed before is kept.");
      void closeBrowsers().finally(() => process.exit(codes[signal]));
    });
  }
}
