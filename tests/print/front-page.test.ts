import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openBrowser } from "../../lib/eleventy/open-browser.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import { makeTempSite } from "../fixtures/temp-site.ts";

// A shelf of a school: forty booklets of two kinds, each with a name of its own.
const rooms = [
  "north",
  "south",
  "reading",
  "music",
  "drama",
  "garden",
  "craft",
  "staff",
  "play",
  "science",
];
const things = ["banner", "apron", "shelf rail", "peg rail"];
const sewn = (title: string): string => `---
title: ${title}
units: cm
stock:
  print: {kind: fabric, width: 140, have: 200}
pieces:
  body: {stock: print, size: [40, 30], seamAllowance: 1}
---
`;
const sawn = (title: string): string => `---
title: ${title}
units: cm
stock:
  batten: {kind: board, section: [3.4, 1.9], length: 240, have: 2}
pieces:
  rail: {stock: batten, length: 60}
---
`;
const files = Object.fromEntries(
  rooms.flatMap((room) =>
    things.map((thing) => {
      const title = `${thing[0]!.toUpperCase()}${thing.slice(1)} of the ${room} room`;
      const text = thing.endsWith("rail") ? sawn(title) : sewn(title);
      return [`${room}-${thing.replace(" ", "-")}.md`, text] as const;
    }),
  ),
);

const folder = makeTempSite(files);
let browser: Browser;
let page: Page;

beforeAll(async () => {
  const site = openSite(folder.content);
  expect(site.faults).toEqual([]);
  await buildSite(site, folder);
  browser = await openBrowser(findBrowser()!);
});
afterAll(async () => {
  await browser.close();
  folder.remove();
});
beforeEach(async () => {
  const context = await browser.newContext({
    offline: true,
    viewport: { width: 1200, height: 800 },
  });
  page = await context.newPage();
  await page.goto(pathToFileURL(resolve(join(folder.output, "index.html"))).href);
});
afterEach(() => page.context().close());

const shown = (): Promise<number> => page.locator(".shelf > li:visible").count();
const said = (): Promise<string | null> => page.getByRole("status").textContent();

describe("the sieve of the front page", () => {
  test("shows every booklet at first, and says how many", async () => {
    expect(await shown()).toBe(40);
    expect(await said()).toBe("40 of 40 booklets");
  });

  test("leaves the booklets that hold every word, whatever its case and place", async () => {
    await page.getByLabel("Find").fill("MUSIC");
    expect(await shown()).toBe(4);
    expect(await said()).toBe("4 of 40 booklets");
    await page.getByLabel("Find").fill("music peg");
    expect(await page.locator(".shelf > li:visible h2").allTextContents()).toEqual([
      "Peg rail of the music room",
    ]);
  });

  test("leaves the booklets that are made of what is ticked", async () => {
    await page.getByLabel("Boards").check();
    expect(await said()).toBe("20 of 40 booklets");
    await page.getByLabel("Find").fill("garden");
    expect(await said()).toBe("2 of 40 booklets");
    await page.getByLabel("Cloth").check();
    expect(await shown()).toBe(0);
    expect(await said()).toBe("0 of 40 booklets");
  });

  test("gives all of them back when it is cleared", async () => {
    await page.getByLabel("Find").fill("banner");
    await page.getByLabel("Cloth").check();
    expect(await shown()).toBe(10);
    await page.getByLabel("Find").fill("");
    await page.getByLabel("Cloth").uncheck();
    expect(await shown()).toBe(40);
  });

  test("is worked by the keyboard alone, and the ring shows where one is", async () => {
    const ring = (): Promise<string> =>
      page.evaluate("getComputedStyle(document.activeElement).outlineStyle");
    await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.id")).toBe("words");
    await page.keyboard.type("drama apron");
    expect(await said()).toBe("1 of 40 booklets");
    await page.keyboard.press("Tab");
    expect(await page.evaluate("document.activeElement.type")).toBe("checkbox");
    expect(await ring()).toBe("solid");
    while (!(await page.evaluate("document.activeElement.matches('.shelf h2 a')"))) {
      await page.keyboard.press("Tab");
    }
    expect(await ring()).toBe("solid");
    await page.keyboard.press("Enter");
    await page.waitForURL(/drama-apron\/index\.html$/);
  });

  // A live region that is filled before it is read says nothing: it has to be there from the start.
  test("says how many in a place that screen readers listen to", async () => {
    const status = page.getByRole("status");
    expect(await status.getAttribute("aria-live")).toBeNull();
    expect(await status.evaluate((each) => each.getAttribute("role"))).toBe("status");
    await page.getByLabel("Find").fill("science");
    expect(await said()).toBe("4 of 40 booklets");
  });
});

test("without scripts the sieve is not there and every booklet is", async () => {
  const context = await browser.newContext({ javaScriptEnabled: false, offline: true });
  const plain = await context.newPage();
  await plain.goto(pathToFileURL(resolve(join(folder.output, "index.html"))).href);
  expect(await plain.locator(".sieve:visible").count()).toBe(0);
  expect(await plain.locator(".shelf > li:visible").count()).toBe(40);
  await context.close();
});
