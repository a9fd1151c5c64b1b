import { closeBrowsers } from "./open-browser.ts";
import { runCommand } from "./run-command.ts";
import { runPdf } from "./run-pdf.ts";

process.once("SIGINT", () => {
  void closeBrowsers().finally(() => process.exit(130));
});

/** `npm run pdf`: build, then print every booklet, or those named, and check each PDF. */
await runCommand(() => runPdf(process.argv.slice(2)));
