import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline/promises";
import { parseArgs } from "node:util";
import { runCommand } from "./run-command.ts";
import { starterFile, starterKinds } from "./starter-file.ts";
import type { StarterKind } from "./starter-file.ts";

const options = {
  title: { type: "string" },
  units: { type: "string" },
  kind: { type: "string" },
} as const;

/** `npm run new`: ask for a title, a unit and a kind of project, and write a file that builds. */
await runCommand(async () => {
  const { values } = parseArgs({ options });
  const ask = makeAsker();
  const title = values.title ?? (await ask("What is it called?", "Bench pad"));
  const units = values.units ?? (await ask("Which unit: in, cm or mm?", "cm"));
  const kind = values.kind ?? (await ask(`What kind: ${starterKinds.join(", ")}?`, "cushion"));
  ask.close();
  if (units !== "in" && units !== "cm" && units !== "mm") {
    throw new Error(`There is no unit ${units} here: choose in, cm or mm.`);
  }
  if (!isKind(kind)) {
    throw new Error(`There is no starter called ${kind}: choose ${starterKinds.join(", ")}.`);
  }
  const slug = title
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  if (slug === "") throw new Error("The title needs at least one letter or digit.");
  const file = join("content", `${slug}.md`);
  if (existsSync(file)) throw new Error(`${file} is there already. Choose another title.`);
  mkdirSync("content", { recursive: true });
  writeFileSync(file, starterFile({ title, units, kind }));
  console.log(`Wrote ${file}. Change its sizes, then: npm run build`);
  return 0;
});

function isKind(kind: string): kind is StarterKind {
  return (starterKinds as readonly string[]).includes(kind);
}

/** Ask at a terminal; without one, take what is usual. */
function makeAsker() {
  const lines = process.stdin.isTTY
    ? createInterface({ input: process.stdin, output: process.stdout })
    : null;
  const ask = async (question: string, usual: string): Promise<string> => {
    const answer = await lines?.question(`${question} [${usual}] `);
    return answer === undefined || answer.trim() === "" ? usual : answer.trim();
  };
  return Object.assign(ask, { close: () => lines?.close() });
}
