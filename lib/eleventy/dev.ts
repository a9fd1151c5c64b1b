import Eleventy from "@11ty/eleventy";
import { parseArgs } from "node:util";
import { runCommand } from "./run-command.ts";

/** `npm run dev`: serve the booklets and build again when content, layouts, lib or shared change. */
await runCommand(async () => {
  const { values } = parseArgs({ options: { port: { type: "string", default: "8080" } } });
  const eleventy = new Eleventy("content", "_site", {
    configPath: ".eleventy.js",
    runMode: "serve",
    quietMode: true,
  });
  await eleventy.init();
  await eleventy.watch();
  await eleventy.serve(Number(values.port));
  process.on("SIGINT", () => process.exit(0));
  return 0;
});
