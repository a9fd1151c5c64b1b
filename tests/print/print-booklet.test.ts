import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { papers } from "../../lib/booklet/paper.ts";
import { patternSheets } from "../../lib/booklet/pattern-sheets.ts";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { gateBooklet } from "../../lib/eleventy/gate-booklet.ts";
import { gatePatterns } from "../../lib/eleventy/gate-patterns.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import type { SiteBooklet } from "../../lib/eleventy/open-site.ts";
import { printBooklet } from "../../lib/eleventy/print-booklet.ts";
import { readPdf } from "../../lib/eleventy/read-pdf.ts";
import type { PdfFacts, PdfPage, Type } from "../../lib/eleventy/read-pdf.ts";
import { smallStages } from "../fixtures/small-stages.ts";
import { goodFile, makeTempSite } from "../fixtures/temp-site.ts";

const executable = findBrowser()!;
const folder = makeTempSite({ "kneeling-pad.md": goodFile });
let entry: SiteBooklet;

beforeAll(async () => {
  const site = openSite(folder.content, smallStages);
  await buildSite(site, folder);
  entry = site.booklets[0]!;
});
afterAll(() => folder.remove());

// Letters and digits only: line ends and the shape of fractions do not matter.
const squash = (text: string): string =>
  text
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "")
    .toLowerCase();

const without = (type: readonly Type[], word: string): readonly Type[] =>
  type.map((each) => ({ ...each, text: each.text.replaceAll(word, "") }));

interface Fault {
  readonly name: string;
  readonly spoil: (page: PdfPage) => PdfPage;
  readonly says: RegExp;
}

const faultsOfPrint: readonly Fault[] = [
  {
    name: "a figure that is not there",
    spoil: (page) => ({ ...page, figures: [] }),
    says: /the figure ".+" is not in the print/,
  },
  {
    name: "a row of a table that is not there",
    spoil: (page) => ({ ...page, type: without(page.type, "upright") }),
    says: /the row ".+" is not in the print/,
  },
  {
    name: "a drawing made of dots",
    spoil: (page) => ({ ...page, pictures: 1 }),
    says: /page 1: a drawing came out as a picture of dots/,
  },
  {
    name: "a letter from another font",
    spoil: (page) => ({
      ...page,
      type: [{ ...page.type[0]!, font: "DejaVuSans", text: "★", points: 11 }],
    }),
    says: /"★" \(U\+2605\) is set in DejaVuSans/,
  },
  {
    name: "type that is too small",
    spoil: (page) => ({
      ...page,
      type: page.type.map((each) => ({ ...each, points: 6 })),
    }),
    says: /is set in 6\.0 pt, less than 7 pt/,
  },
  // A step whose words ran on into a column beside the page was once lost without a word.
  {
    name: "words that stand beside the page",
    spoil: (page) => ({
      ...page,
      type: page.type.map((each) => ({ ...each, left: each.left + page.width })),
    }),
    says: /page 1: ".+" stands outside the margins/,
  },
  {
    name: "words that stand in the margin",
    spoil: (page) => ({
      ...page,
      type: page.type.map((each) => ({ ...each, left: each.left - 10 })),
    }),
    says: /page 2: ".+" stands outside the margins/,
  },
  {
    name: "a line drawn over the margin",
    spoil: (page) => ({
      ...page,
      paths: [...page.paths, { left: 150, low: 100, width: 50, height: 0, lost: 0 }],
    }),
    says: /page 1: a line 150 mm from the left, 100 mm from the foot runs over the margins/,
  },
  // A figure with upright text at its right edge was once cut there.
  {
    name: "a line that is cut off",
    spoil: (page) => ({ ...page, paths: page.paths.map((each) => ({ ...each, lost: 3 })) }),
    says: /page 2: a line .+ is cut off/,
  },
];

describe.each(["a4", "letter"] as const)("printed on %s", (name) => {
  const paper = papers[name];
  let booklet: PdfFacts;
  let patterns: PdfFacts;
  let bytes: Uint8Array;

  beforeAll(async () => {
    const results = await printBooklet(entry, { executable, output: folder.output, paper });
    expect(results.flatMap(({ problems }) => problems)).toEqual([]);
    bytes = readFileSync(results[0]!.file);
    booklet = await readPdf(bytes, { withDetails: true });
    patterns = await readPdf(readFileSync(results[1]!.file), { withDetails: true });
  });

  // ISO 216 and ANSI/ASME Y14.1; Chromium writes whole CSS pixels, so 0.2 mm is allowed.
  test("every page has the size of the sheet", () => {
    for (const { width, height } of [...booklet.pages, ...patterns.pages]) {
      expect(Math.abs(width - paper.width)).toBeLessThan(0.2);
      expect(Math.abs(height - paper.height)).toBeLessThan(0.2);
    }
  });

  test("each part starts a page of its own, and what belongs together runs on", () => {
    const starting = entry.booklet.pages.filter(({ startsSheet }) => startsSheet);
    expect(booklet.pages.length).toBeGreaterThanOrEqual(starting.length);
    for (const { title } of starting.slice(1)) {
      const heads = booklet.pages.map(({ text }) => squash(text));
      expect(heads.some((text) => text.includes(squash(title)))).toBe(true);
    }
    expect(booklet.pages.length).toBeLessThan(entry.booklet.pages.length * 2);
  });

  test("every step and every table row of the source is on paper", () => {
    const text = squash(booklet.pages.map((page) => page.text).join("\n"));
    for (const { title, actions } of entry.plan.steps) {
      for (const words of [title, ...actions]) expect(text).toContain(squash(words));
    }
    for (const { item, basis } of entry.plan.materials) {
      expect(text).toContain(squash(item));
      expect(text).toContain(squash(basis));
    }
  });

  test("a caution stands before its step's actions on the same page", () => {
    for (const { cautions, actions } of entry.plan.steps) {
      for (const { avoid } of cautions) {
        const pages = booklet.pages.map((page) => squash(page.text));
        const found = pages.find((text) => text.includes(squash(avoid)))!;
        expect(found.indexOf(squash(avoid))).toBeLessThan(found.indexOf(squash(actions[0]!)));
        expect(found).toContain(squash(actions.at(-1)!));
      }
    }
  });

  test("the contents give the page on which each part begins", () => {
    const contents = booklet.pages[1]!.text;
    for (const { title } of entry.booklet.pages.slice(2)) {
      const line = contents.split("\n").find((each) => squash(each).startsWith(squash(title)))!;
      const number = Number(/(\d+)\s*$/.exec(line)![1]);
      expect(squash(booklet.pages[number - 1]!.text), `${title} on page ${number}`).toContain(
        squash(title),
      );
    }
  });

  test("it says what it is, in which language, and is tagged", () => {
    expect(booklet).toMatchObject({
      title: "Kneeling pad",
      author: "R. Example",
      language: "en-GB",
      isTagged: true,
    });
    expect(booklet.outline).toContain("Materials");
    expect(patterns).toMatchObject({
      title: "Kneeling pad: full-size patterns",
      language: "en-GB",
      isTagged: true,
    });
  });

  test("its fonts ride in the file", () => {
    const source = Buffer.from(bytes).toString("latin1");
    const fonts = source.match(/\/FontDescriptor\b/g)!.length;
    expect(fonts).toBeGreaterThan(1);
    expect(source.match(/\/FontFile[23]?\b/g)!.length * 1).toBeGreaterThanOrEqual(2);
    expect([...source.matchAll(/\/FontName \/([^\s/]+)/g)].map((match) => match[1])).toEqual(
      expect.arrayContaining([expect.stringMatching(/^[A-Z]{6}\+SourceSans3/)]),
    );
  });

  // The reader's own check: a line of 100 mm and one of 4 in (101.6 mm exactly), both ways, every sheet.
  test.each([
    ["100 mm", 100],
    ["4 in", 101.6],
  ])("its %s lines are true to 0.1 mm on every pattern sheet", (_, length) => {
    expect(patterns.pages.length).toBe(patternSheets(entry.plan, name).sheets.length);
    for (const { paths } of patterns.pages) {
      for (const [way, across] of [
        ["width", "height"],
        ["height", "width"],
      ] as const) {
        const lines = paths.filter(
          (box) => Math.abs(box[across] - 3) < 0.1 && Math.abs(box[way] - length) <= 0.1,
        );
        expect(lines).toHaveLength(1);
      }
    }
  });

  test("a circle of 110 mm across comes out 110 mm across", () => {
    const round = patterns.pages[1]!.paths.filter(
      ({ width, height }) => Math.abs(width - 110) < 0.1 && Math.abs(height - 110) < 0.1,
    );
    expect(round).toHaveLength(1);
  });

  // Each fault is made in what was read from a good print, so that the gates are known to look.
  test.each(faultsOfPrint)("its gates notice $name", ({ spoil, says }) => {
    const gate = (facts: PdfFacts): readonly string[] =>
      gateBooklet(facts, entry.booklet, { paper, leastType: 7 });
    expect(gate(booklet)).toEqual([]);
    const spoilt = { ...booklet, pages: booklet.pages.map(spoil) };
    expect(gate(spoilt).join("\n")).toMatch(says);
  });

  test("its gates notice a lost step, a wrong sheet and a shrunken line", () => {
    const lost = {
      ...booklet,
      pages: booklet.pages.map((page) => ({
        ...page,
        type: without(page.type, "Snip 4"),
      })),
    };
    expect(gateBooklet(lost, entry.booklet, { paper, leastType: null })).toEqual([
      expect.stringContaining("Snip 4 mm into"),
    ]);
    expect(gateBooklet(booklet, entry.booklet, { paper: papers.a3, leastType: null })).toEqual([
      expect.stringContaining("page 1 is not A3"),
    ]);
    const shrunken = {
      ...patterns,
      pages: patterns.pages.map((page) => ({
        ...page,
        paths: page.paths.map((box) => ({ ...box, width: box.width * 0.997 })),
      })),
    };
    expect(gatePatterns(shrunken, patternSheets(entry.plan, name)).join()).toContain(
      "100 mm line along the page is missing or off",
    );
  });
});

test("printing twice gives the same bytes", async () => {
  const print = async (): Promise<Buffer> => {
    await printBooklet(entry, { executable, output: folder.output, paper: papers.a4 });
    return readFileSync(join(folder.output, "kneeling-pad/kneeling-pad.pdf"));
  };
  expect((await print()).equals(await print())).toBe(true);
});
