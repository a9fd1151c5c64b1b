import { AxeBuilder } from "@axe-core/playwright";
import { globSync } from "tinyglobby";
import { readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openBrowser } from "../../lib/eleventy/open-browser.ts";
import { openKept } from "../../lib/eleventy/open-kept.ts";
import { makeTempSite } from "../fixtures/temp-site.ts";
import { htmlFaults } from "./html-rules.ts";

// The demos as they are, every kind of page that a reader can open.
const slugs = ["batten-crate", "bay-window-pad", "library-corner-seat", "round-pouf"];
const folder = makeTempSite(
  Object.fromEntries(
    slugs.map((slug) => [`${slug}.md`, readFileSync(`content/${slug}.md`, "utf8")]),
  ),
);
/** axe takes long over a long page: it looks at one booklet of wood and one of foam and cloth. */
const read = ["batten-crate", "library-corner-seat"];
const screens = ["index.html", "checks/index.html", ...slugs.map((slug) => `${slug}/index.html`)];
let browser: Browser;

beforeAll(async () => {
  await buildSite(await openKept(folder.content), folder);
  browser = await openBrowser(findBrowser()!);
});
afterAll(async () => {
  await browser.close();
  folder.remove();
});

/** A page of the site opened from the disk, with whatever it asked for that is not on the disk. */
async function open(file: string, width: number): Promise<{ page: Page; outside: string[] }> {
  const context = await browser.newContext({ viewport: { width, height: 800 } });
  const page = await context.newPage();
  const outside: string[] = [];
  page.on("request", (request) => {
    if (!/^(file|data):/.test(request.url())) outside.push(request.url());
  });
  page.on("requestfailed", (request) => outside.push(request.url()));
  page.on("pageerror", (error) => outside.push(error.message));
  await page.goto(pathToFileURL(resolve(folder.output, file)).href);
  return { page, outside };
}

const faultsOf = async (page: Page): Promise<readonly string[]> =>
  (await new AxeBuilder({ page }).analyze()).violations.map(
    ({ id, nodes }) => `${id}: ${nodes[0]!.html.slice(0, 200)}`,
  );

test("every page of HTML is valid", async () => {
  const files = globSync("**/*.html", { cwd: folder.output });
  expect(files.length).toBeGreaterThan(slugs.length * 4);
  const faults: string[] = [];
  for (const file of files) {
    const found = await htmlFaults(readFileSync(join(folder.output, file), "utf8"));
    faults.push(...found.map((line) => `${file}:${line}`));
  }
  expect(faults).toEqual([]);
});

describe.each([
  ["a phone", 360],
  ["a desk", 1280],
])("on %s", (_, width) => {
  const looked = screens.filter((file) => !file.includes("-") || read.includes(dirname(file)));
  test.each(looked)("%s has no fault that axe finds and stands on its own", async (file) => {
    const { page, outside } = await open(file, width);
    expect(await faultsOf(page)).toEqual([]);
    expect(outside).toEqual([]);
    await page.context().close();
  });

  test.each(screens)("%s fits: nothing scrolls sideways, no figure is cut", async (file) => {
    const { page } = await open(file, width);
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
    const wide = await page.evaluate(
      `[...document.querySelectorAll("svg.figure")].filter((each) => {
        const { left, right } = each.getBoundingClientRect();
        return left < 0 || right > ${width};
      }).map((each) => each.parentElement.parentElement.id)`,
    );
    expect(wide).toEqual([]);
    await page.context().close();
  });
});

test.each(slugs)(
  "%s can be walked through with the tab key, and shows where one is",
  async (slug) => {
    const { page } = await open(`${slug}/index.html`, 1280);
    const seen = new Set<string>();
    for (let presses = 0; presses < 40; presses++) {
      await page.keyboard.press("Tab");
      const { name, ring } = (await page.evaluate(
        `({ name: document.activeElement.outerHTML.slice(0, 120), ring: getComputedStyle(document.activeElement).outlineStyle })`,
      )) as { name: string; ring: string };
      expect(ring, name).toBe("solid");
      seen.add(name);
    }
    expect(seen.size).toBeGreaterThan(10);
    await page.context().close();
  },
);

test("the paged booklet has no fault that axe finds once its pages are laid out", async () => {
  const { page, outside } = await open("batten-crate/print/index.html", 1280);
  await page.waitForFunction("document.documentElement.dataset.paged");
  expect(await page.evaluate("document.documentElement.dataset.paged")).toBe("done");
  expect(await faultsOf(page)).toEqual([]);
  expect(outside).toEqual([]);
  await page.context().close();
});

test.each(read)("the pattern sheets of %s have no fault that axe finds", async (slug) => {
  const { page, outside } = await open(`${slug}/patterns/index.html`, 1280);
  expect(await faultsOf(page)).toEqual([]);
  expect(outside).toEqual([]);
  await page.context().close();
});
