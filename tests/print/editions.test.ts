import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { EditionName } from "../../lib/booklet/editions.ts";
import { papers } from "../../lib/booklet/paper.ts";
import type { Task } from "../../lib/booklet/pages.ts";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { editionOf } from "../../lib/eleventy/edition-of.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import type { SiteBooklet } from "../../lib/eleventy/open-site.ts";
import { printRequest } from "../../lib/eleventy/print-booklet.ts";
import { requestFor } from "../../lib/eleventy/print-request.ts";
import { readPdf } from "../../lib/eleventy/read-pdf.ts";
import type { PdfFacts } from "../../lib/eleventy/read-pdf.ts";
import { smallStages } from "../fixtures/small-stages.ts";
import { goodFile, makeTempSite } from "../fixtures/temp-site.ts";
import { htmlFaults } from "./html-rules.ts";

const executable = findBrowser()!;
const folder = makeTempSite({ "kneeling-pad.md": goodFile });
const names: readonly EditionName[] = ["large-print", "handout", "answers", "folded"];
let entry: SiteBooklet;
const printed = new Map<EditionName, PdfFacts>();

beforeAll(async () => {
  const site = openSite(folder.content, smallStages);
  entry = site.booklets[0]!;
  const requests = names.map((name) => requestFor(entry, name, "letter"));
  await buildSite(site, { ...folder, requests });
  for (const request of requests) {
    const { file, problems } = await printRequest(entry, request, {
      executable,
      output: folder.output,
    });
    expect(problems).toEqual([]);
    printed.set(
      request.form as EditionName,
      await readPdf(readFileSync(file), { withDetails: true }),
    );
  }
});
afterAll(() => folder.remove());

const squash = (text: string): string => text.normalize("NFKD").replace(/[^\p{L}\p{N}]+/gu, "");
const textOf = (name: EditionName): string =>
  squash(
    printed
      .get(name)!
      .pages.map(({ text }) => text)
      .join(" "),
  );
const tasks = (): readonly Task[] =>
  editionOf(entry, "answers", "letter").pages.flatMap((page) =>
    page.kind === "worksheet" ? page.tasks : [],
  );

describe("letters are as large as each edition promises", () => {
  // UKAAF and the American Council of the Blind: large print is 18 pt, its page numbers too. UKAAF clear
  // print: 12 pt. Labels of figures may go down to 12 pt where 18 pt finds no clear place.
  test.each([
    ["large-print", 18],
    ["handout", 12],
    ["answers", 12],
  ] as const)("%s: words are set in %i pt or more", (name, least) => {
    const type = printed.get(name)!.pages.flatMap((page) => page.type);
    expect(type.length).toBeGreaterThan(50);
    const sentences = type.filter(({ text }) => text.includes(" ") && text.length > 30);
    expect(Math.min(...sentences.map(({ points }) => points))).toBeGreaterThanOrEqual(least - 0.05);
    expect(Math.min(...type.map(({ points }) => points))).toBeGreaterThanOrEqual(11.95);
  });
});

describe("the handout", () => {
  test("has a line for name and date on every page, and says which page it is", () => {
    const { pages } = printed.get("handout")!;
    pages.forEach(({ text }, i) => {
      expect(text).toMatch(/Name _{20,}/);
      expect(text).toMatch(/Date _{10,}/);
      expect(text).toContain(`page ${i + 1} of ${pages.length}`);
    });
  });

  test("begins each part of the work on a page of its own", () => {
    const titles = editionOf(entry, "handout", "letter").pages.map(({ title }) => squash(title));
    const pages = printed.get("handout")!.pages.map(({ text }) => squash(text));
    // The foot of a page names its part, so the first page that names a part is where it begins.
    const begins = titles.slice(1).map((title) => pages.findIndex((text) => text.includes(title)));
    expect(begins.every((page, i) => page > (begins[i - 1] ?? 0))).toBe(true);
  });

  test("asks for sizes and gives none of the answers; the answers edition gives them all", () => {
    expect(tasks().length).toBeGreaterThan(0);
    for (const { ask, answer } of tasks()) {
      expect(textOf("handout")).toContain(squash(ask));
      expect(textOf("answers")).toContain(squash(`Answer: ${answer}`));
      expect(textOf("handout")).not.toContain(squash(`Answer: ${answer}`));
    }
    for (const { text } of printed.get("answers")!.pages) expect(text).toContain("Answers");
  });

  test("has every action of every step, each with a box to tick", () => {
    const html = readFileSync(
      join(folder.output, "kneeling-pad/handout/letter/index.html"),
      "utf8",
    );
    const actions = entry.plan.steps.flatMap((step) => step.actions);
    for (const action of actions) expect(textOf("handout")).toContain(squash(action));
    const boxes = html.match(/<li><span class="box"/g)!;
    expect(boxes.length).toBeGreaterThanOrEqual(actions.length);
  });
});

describe("the booklet to fold", () => {
  test("lies two pages to a side, in the order that folding puts right", () => {
    const { pages } = printed.get("folded")!;
    const count = Number(/of (\d+)/.exec(pages[1]!.text)![1]);
    expect(pages).toHaveLength(Math.ceil(count / 4) * 2);
    const whole = Math.ceil(count / 4) * 4;
    pages.forEach(({ text }, side) => {
      const found = [...text.matchAll(/page (\d+) of/g)].map((match) => Number(match[1]));
      const sheet = Math.floor(side / 2);
      const wanted =
        side % 2 === 0
          ? [whole - 2 * sheet, 2 * sheet + 1]
          : [2 * sheet + 2, whole - 2 * sheet - 1];
      // The cover has no number, and pages past the last are blank.
      expect(found).toEqual(wanted.filter((page) => page > 1 && page <= count));
    });
  });

  test("is as large as a sheet on its side", () => {
    for (const { width, height } of printed.get("folded")!.pages) {
      expect(Math.abs(width - papers.letter.height)).toBeLessThan(0.27);
      expect(Math.abs(height - papers.letter.width)).toBeLessThan(0.27);
    }
  });

  test("sets no letter under 8 pt, which a copier would lose", () => {
    const type = printed.get("folded")!.pages.flatMap((page) => page.type);
    expect(Math.min(...type.map(({ points }) => points))).toBeGreaterThanOrEqual(7.95);
  });
});

test.each(names)("the page of %s is valid HTML", async (name) => {
  const file = join(folder.output, `kneeling-pad/${name}/letter/index.html`);
  expect(await htmlFaults(readFileSync(file, "utf8"))).toEqual([]);
});

test("the screen page links every PDF there is, and nothing else", () => {
  const html = readFileSync(join(folder.output, "kneeling-pad/index.html"), "utf8");
  const links = [...html.matchAll(/href="([^"#]+\.pdf)"/g)].map((match) => match[1]!);
  expect(links).toHaveLength(names.length);
  for (const link of links)
    expect(existsSync(join(folder.output, "kneeling-pad", link))).toBe(true);
  const other = readFileSync(join(folder.output, "kneeling-pad-small/index.html"), "utf8");
  expect(other).not.toContain(".pdf");
});

test("nothing of it is built unless somebody asks", async () => {
  await buildSite(openSite(folder.content, smallStages), folder);
  expect(existsSync(join(folder.output, "kneeling-pad/handout"))).toBe(false);
});
