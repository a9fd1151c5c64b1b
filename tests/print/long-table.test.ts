import { readFileSync, writeFileSync } from "node:fs";
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

// Each length of table ends its pages at other heights: the head that is repeated must be counted in.
test.each([60, 97, 150])("a table of %i rows that runs over pages loses none", async (rows) => {
  const long = good.replace(/<tr id="(materials-list)-1">(.*?)<\/tr>/s, (row, id: string) =>
    Array.from({ length: rows }, (_, i) =>
      i === 0 ? row : row.replace(`"${id}-1"`, `"${id}-more-${i}"`),
    ).join("\n"),
  );
  expect(long).toContain(`materials-list-more-${rows - 1}`);
  writeFileSync(page, long);
  const printed = await printRequest(entry, request, {
    executable: findBrowser()!,
    output: folder.output,
  });
  expect(printed.problems).toEqual([]);
  expect(printed.pages).toBeGreaterThan(3);
});
