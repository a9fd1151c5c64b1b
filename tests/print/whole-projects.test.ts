import { AxeBuilder } from "@axe-core/playwright";
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { papers } from "../../lib/booklet/paper.ts";
import { planSchema } from "../../lib/booklet/plan-schema.ts";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openBrowser } from "../../lib/eleventy/open-browser.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import type { Site } from "../../lib/eleventy/open-site.ts";
import { readPdf } from "../../lib/eleventy/read-pdf.ts";
import { printBooklet } from "../../lib/eleventy/print-booklet.ts";
import { makeTempSite } from "../fixtures/temp-site.ts";
import { htmlFaults } from "./html-rules.ts";

const names = ["batten-crate", "bay-pad", "round-pouf", "seat-block"];
const fixture = (name: string): string =>
  readFileSync(`tests/fixtures/projects/${name}.md`, "utf8");
const folder = makeTempSite(Object.fromEntries(names.map((name) => [`${name}.md`, fixture(name)])));
const executable = findBrowser()!;
let site: Site;
let browser: Browser;

beforeAll(async () => {
  site = openSite(folder.content);
  await buildSite(site, folder);
  browser = await openBrowser(executable);
});
afterAll(async () => {
  await browser.close();
  folder.remove();
});

// Letters and digits only: line ends and the shape of fractions do not matter.
const squash = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .toLowerCase();

test("whole projects have no fault", () => {
  expect(site.faults).toEqual([]);
});

describe.each(names)("the project %s", (name) => {
  const entry = () => site.booklets.find(({ slug }) => slug === name)!;

  test.each([papers.a4, papers.letter])("prints whole and true on $label", async (paper) => {
    const results = await printBooklet(entry(), { executable, output: folder.output, paper });
    expect(results.flatMap(({ problems }) => problems)).toEqual([]);
    expect(results.map(({ pages }) => pages > 0)).toEqual([true, true]);
  });

  // ANSI Z535.6: the message stands before the action it is about; here also on the same page, read back from
  // the PDF that was printed above.
  test("sets every caution before the actions of its step, on the same page", async () => {
    const [booklet] = await printBooklet(entry(), {
      executable,
      output: folder.output,
      paper: papers.a4,
    });
    const { pages } = await readPdf(readFileSync(booklet!.file));
    const texts = pages.map(({ text }) => squash(text));
    entry().plan.steps.forEach(({ title, actions, cautions }, index) => {
      const [first] = actions;
      if (first === undefined || cautions.length === 0) return;
      const head = squash(`${index + 1} ${title}`);
      const page = texts.find(
        (text) => text.indexOf(squash(first), text.indexOf(head)) > 0 && text.includes(head),
      )!;
      const start = page.indexOf(head);
      const action = page.indexOf(squash(first), start);
      for (const { avoid } of cautions) {
        const at = page.indexOf(squash(avoid), start);
        expect(at, `${title}: ${avoid}`).toBeGreaterThan(start);
        expect(at, `${title}: ${avoid}`).toBeLessThan(action);
      }
    });
  });

  test("writes a plan that its schema accepts", () => {
    const plan = JSON.parse(readFileSync(join(folder.output, name, "plan.json"), "utf8"));
    expect(planSchema.safeParse(plan).error).toBeUndefined();
  });

  test.each(["index.html", "print/index.html", "patterns/index.html"])(
    "writes valid HTML in %s",
    async (page) => {
      expect(await htmlFaults(readFileSync(join(folder.output, name, page), "utf8"))).toEqual([]);
    },
  );

  test("has a screen page in which axe finds no fault", async () => {
    const context = await browser.newContext({
      offline: true,
      viewport: { width: 390, height: 800 },
    });
    const page = await context.newPage();
    await page.goto(pathToFileURL(resolve(folder.output, name, "index.html")).href);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(390);
    await context.close();
  });
});
