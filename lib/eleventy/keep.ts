import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { writeOffcuts } from "../booklet/write-offcuts.ts";
import { openKept } from "./open-kept.ts";
import { runCommand } from "./run-command.ts";

/** `npm run keep -- <slug>`: write what a project leaves over to a stock file for other projects. */
await runCommand(async () => {
  const [slug] = process.argv.slice(2);
  const { booklets } = await openKept();
  const found = booklets.find((each) => each.slug === slug);
  if (found === undefined) {
    const known = booklets.map((each) => each.slug).join(", ");
    throw new Error(`Usage: npm run keep -- <slug>. There are: ${known || "none"}.`);
  }
  const text = writeOffcuts(found.plan);
  if (text === null) {
    console.log(`${found.slug} leaves nothing over that is worth keeping.`);
    return 0;
  }
  const file = join("content", "stock", `${found.slug}.yaml`);
  if (existsSync(file)) throw new Error(`${file} is there already. Move it away first.`);
  mkdirSync(join("content", "stock"), { recursive: true });
  writeFileSync(file, text);
  console.log(`Wrote ${file}. Name it in a project: stockFiles: [${found.slug}]`);
  return 0;
});
