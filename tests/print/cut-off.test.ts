import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import { printRequest } from "../../lib/eleventy/print-booklet.ts";
import { pageOf, requestFor } from "../../lib/eleventy/print-request.ts";
import { smallStages } from "../fixtures/small-stages.ts";
import { goodFile, makeTempSite } from "../fixtures/temp-site.ts";

const folder = makeTempSite({ "kneeling-pad.md": goodFile });
const site = openSite(folder.content, smallStages);
const entry = site.booklets.find(({ slug }) => slug === "kneeling-pad")!;
const request = requestFor(entry, "booklet", "a4");
const page = join(folder.output, pageOf(entry, request));
let good: string;

beforeAll(async () => {
  await buildSite(site, folder);
  good = readFileSync(page, "utf8");
});
afterAll(() => folder.remove());

// Each rule spoils the page in a way that has happened, and that a browser prints without a word.
test.each([
  {
    name: "a step whose words stand in the margin",
    rule: ".step-words { position: relative; left: -18mm; }",
    says: /stands outside the margins/,
  },
  {
    name: "a figure that what holds it cuts off",
    rule: ".drawing-box { height: 12mm; overflow: hidden; }",
    says: /is cut off/,
  },
  {
    name: "a figure drawn over the margin",
    rule: ".step figure.drawing { position: relative; left: 40mm; }",
    says: /runs over the margins/,
  },
  {
    name: "words that are not shown",
    rule: ".step .actions li:first-child { display: none; }",
    says: /is not in the print/,
  },
])("a print with $name is refused, and not put in place", async ({ rule, says }) => {
  writeFileSync(page, good.replace("</head>", `<style data-pagedjs-ignore>${rule}</style></head>`));
  const printed = await printRequest(entry, request, {
    executable: findBrowser()!,
    output: folder.output,
  });
  expect(printed.problems.join("\n")).toMatch(says);
  expect(existsSync(printed.file)).toBe(false);
});
