import { runCommand } from "./run-command.ts";
import { runPdf } from "./run-pdf.ts";
import { stopGently } from "./stop-gently.ts";

stopGently();

/** `npm run pdf`: build, then print every booklet, or those named, and check each PDF. */
await runCommand(() => runPdf(process.argv.slice(2)));
