import { AxeBuilder } from "@axe-core/playwright";
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openBrowser } from "../../lib/eleventy/open-browser.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import { smallStages } from "../fixtures/small-stages.ts";
import { htmlFaults } from "./html-rules.ts";
import { goodFile, makeTempSite } from "../fixtures/temp-site.ts";

const folder = makeTempSite({ "kneeling-pad.md": goodFile });
const pages = [
  "index.html",
  "checks/index.html",
  "kneeling-pad/index.html",
  "kneeling-pad/print/index.html",
  "kneeling-pad/patterns/index.html",
];
let browser: Browser;

beforeAll(async () => {
  await buildSite(openSite(folder.content, smallStages), folder);
  browser = await openBrowser(findBrowser()!);
});
afterAll(async () => {
  await browser.close();
  folder.remove();
});

test.each(pages)("%s is valid HTML", async (page) => {
  expect(await htmlFaults(readFileSync(join(folder.output, page), "utf8"))).toEqual([]);
});

describe.each([
  ["a phone", 360],
  ["a desk", 1280],
])("on %s", (_, width) => {
  test.each(pages.filter((page) => !page.includes("print") && !page.includes("patterns")))(
    "%s has no fault that axe can find",
    async (page) => {
      const context = await browser.newContext({ offline: true, viewport: { width, height: 800 } });
      const opened = await context.newPage();
      const failed: string[] = [];
      opened.on("requestfailed", (request) => failed.push(request.url()));
      opened.on("pageerror", (error) => failed.push(error.message));
      await opened.goto(pathToFileURL(resolve(folder.output, page)).href);
      const { violations } = await new AxeBuilder({ page: opened }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
      expect(failed).toEqual([]);
      expect(await opened.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(
        width,
      );
      await context.close();
    },
  );
});
