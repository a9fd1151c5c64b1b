import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { openBrowser } from "./open-browser.ts";

export interface Printed {
  readonly pdf: Buffer;
  /** What the page itself found wrong: lost ids, things wider than their page. */
  readonly problems: readonly string[];
}

/** Longest that paged.js may take over a booklet. @source our choice: 200 pages take about 20 s */
const patience = 120_000;

/**
 * Print a page of the site from its file, offline. The booklet is paginated first. Each print has a
 * browser of its own: one that has printed before numbers its tags on, and the bytes would differ.
 */
export async function printPage(
  executable: string,
  file: string,
  { isPaged }: { readonly isPaged: boolean },
): Promise<Printed> {
  const browser = await openBrowser(executable);
  try {
    const context = await browser.newContext({ offline: true });
    const page = await context.newPage();
    await page.goto(pathToFileURL(resolve(file)).href);
    const lost = isPaged ? await waitForPages(page) : [];
    await page.evaluate("document.fonts.ready");
    const wide = (await page.evaluate(isPaged ? widePages : wideSheets)) as string[];
    const pdf = await page.pdf({
      preferCSSPageSize: true,
      printBackground: true,
      tagged: true,
      outline: true,
    });
    return { pdf, problems: [...lost, ...wide] };
  } finally {
    await browser.close();
  }
}

async function waitForPages(page: Page): Promise<readonly string[]> {
  await page.waitForFunction("document.documentElement.dataset.paged", undefined, {
    timeout: patience,
  });
  const { paged, missing, reason } = (await page.evaluate(
    "({...document.documentElement.dataset})",
  )) as { paged: string; missing?: string; reason?: string };
  if (paged !== "done") return [`the pages could not be laid out: ${reason ?? "no reason given"}`];
  return (JSON.parse(missing ?? "[]") as string[]).map((id) => `${id} is not in the print`);
}

// Text of scripts that run in the page, where no module of ours can be reached.
const widePages = `[...document.querySelectorAll(".pagedjs_page")].flatMap((page, i) => {
  const area = page.querySelector(".pagedjs_page_content").getBoundingClientRect();
  const sheet = page.getBoundingClientRect();
  return [...page.querySelectorAll(":is(svg, img, table, tr, p, li, h1, h2, h3, h4, dt, dd, figcaption, .notice)")]
    .filter((each) => page.querySelector(".pagedjs_page_content").contains(each))
    .filter((each) => !each.classList.contains("hidden"))
    .flatMap((each) => {
      const box = each.getBoundingClientRect();
      const name = each.id || each.getAttribute("class") || each.tagName;
      if (box.right > area.right + 1) return ["page " + (i + 1) + ": " + name + " is wider than its page"];
      if (box.bottom > sheet.bottom - 50) return ["page " + (i + 1) + ": " + name + " runs off the foot of its page"];
      return [];
    })
    .slice(0, 3);
})`;

const wideSheets = `[...document.querySelectorAll(".sheet")].flatMap((sheet) => {
  const room = sheet.getBoundingClientRect();
  return [...sheet.querySelectorAll(".figure-sheet, .sheet-words, .sheet-words *")]
    .filter((each) => each.getBoundingClientRect().right > room.right + 0.5)
    .map((each) => sheet.id + ": " + (each.id || each.getAttribute("class") || each.tagName) + " is wider than its page");
})`;
