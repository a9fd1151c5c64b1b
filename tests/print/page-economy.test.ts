import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import type { SiteBooklet } from "../../lib/eleventy/open-site.ts";
import { printBooklet } from "../../lib/eleventy/print-booklet.ts";
import { makeTempSite } from "../fixtures/temp-site.ts";
import { readLayout } from "./read-layout.ts";
import type { Layout } from "./read-layout.ts";

// Measured on the PDF, not on the page it was printed from.
const demos = ["batten-crate", "bay-window-pad", "library-corner-seat", "round-pouf"];
const folder = makeTempSite(
  Object.fromEntries(
    demos.map((name) => [`${name}.md`, readFileSync(`content/${name}.md`, "utf8")]),
  ),
);
let booklets: readonly SiteBooklet[];

beforeAll(async () => {
  const site = openSite(folder.content);
  booklets = site.booklets;
  await buildSite(site, folder);
});
afterAll(() => folder.remove());

const squash = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .toLowerCase();

describe.each(demos)("the pages of %s", (name) => {
  let entry: SiteBooklet;
  let layout: Layout;

  beforeAll(async () => {
    entry = booklets.find(({ slug }) => slug === name)!;
    const job = { executable: findBrowser()!, output: folder.output, paper: entry.booklet.paper };
    const [printed] = await printBooklet(entry, job);
    expect(printed!.problems).toEqual([]);
    layout = await readLayout(readFileSync(printed!.file));
  });

  // The least that still reads as a page of a book. @source our choice, set in the design of the booklet
  test("are a quarter full at least, but for the last of a part", () => {
    const starting = entry.booklet.pages.filter(({ startsSheet }) => startsSheet);
    const startsPart = (page: number): boolean => {
      const next = layout.pages[page];
      if (next === undefined) return true;
      const text = squash(next.lines.map((line) => line.text).join(""));
      return starting.some(({ title }) => text.startsWith(squash(title)));
    };
    const thin = layout.pages.flatMap(({ fill }, i) =>
      fill < 0.25 && !startsPart(i + 1) ? [`page ${i + 1}: ${fill.toFixed(2)}`] : [],
    );
    expect(thin).toEqual([]);
  });

  test("never leave a heading alone at the foot", () => {
    const stranded = layout.pages.flatMap((page, i) =>
      page.stranded === null ? [] : [`page ${i + 1}: ${page.stranded}`],
    );
    expect(stranded).toEqual([]);
  });

  test("say the page of whatever a step points at", () => {
    const text = layout.pages.flatMap(({ lines }) => lines.map((line) => line.text)).join(" ");
    const uses = entry.booklet.pages
      .flatMap((page) => (page.kind === "steps" ? page.steps : []))
      .flatMap((step) => step.uses)
      .filter(({ target }) => target !== null);
    expect(uses.length).toBeGreaterThan(0);
    for (const { words, target } of uses) {
      const pattern = `${words.trim().split(/\s+/).map(escape).join("\\s+")}\\s*,\\s+page\\s+(\\d+)`;
      const said = [...text.matchAll(new RegExp(pattern, "g"))].map((match) => Number(match[1]));
      expect(said.length, words).toBeGreaterThan(0);
      expect([...new Set(said)], words).toEqual([layout.pageOf(target!)]);
    }
  });
});

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

// A booklet of eight panels once took 40 pages of Letter, many of them half empty; steps that missed
// their page by a few millimetres took 27 pages for the bench pad.
test.each([
  ["batten-crate", 14],
  ["bay-window-pad", 23],
  ["library-corner-seat", 31],
  ["round-pouf", 20],
] as const)("%s takes %i pages at most", async (name, most) => {
  const file = `${folder.output}/${name}/${name}.pdf`;
  const { pages } = await readLayout(readFileSync(file));
  expect(pages.length).toBeLessThanOrEqual(most);
});
