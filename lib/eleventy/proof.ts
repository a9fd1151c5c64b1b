import { mkdirSync, renameSync, writeFileSync } from "node:fs";
import { copyAssets } from "./copy-assets.ts";
import { openKept } from "./open-kept.ts";
import type { SiteBooklet } from "./open-site.ts";
import { proofPage } from "./proof-page.ts";
import { count } from "./report-site.ts";
import { runCommand } from "./run-command.ts";

const folders = ["content", "tests/fixtures/projects"];

/** `npm run proof`: one page with every figure of every demo and every fixture, for people to look at. */
await runCommand(async () => {
  const booklets: SiteBooklet[] = [];
  for (const folder of folders) booklets.push(...(await openKept(folder)).booklets);
  const { html, figures, collisions } = proofPage(booklets);
  mkdirSync("_site/proof", { recursive: true });
  copyAssets("_site");
  writeFileSync("_site/proof/index.html.part", html);
  renameSync("_site/proof/index.html.part", "_site/proof/index.html");
  collisions.forEach((line) => console.log(line));
  console.log(
    `_site/proof/index.html: ${count(figures, "figure")}, ${count(collisions.length, "collision")}`,
  );
  return collisions.length > 0 ? 1 : 0;
});
