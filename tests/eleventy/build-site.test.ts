import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import type { Site } from "../../lib/eleventy/open-site.ts";
import { reportSite } from "../../lib/eleventy/report-site.ts";
import { smallStages } from "../fixtures/small-stages.ts";
import { badFile, goodFile, makeTempSite } from "../fixtures/temp-site.ts";

const folder = makeTempSite({
  "kneeling-pad.md": goodFile,
  "broken.md": badFile,
  "_draft.md": badFile,
});
const read = (file: string): string => readFileSync(join(folder.output, file), "utf8");

let site: Site;
beforeAll(async () => {
  site = openSite(folder.content, smallStages);
  await buildSite(site, folder);
});
afterAll(() => folder.remove());

describe("building a folder with one good and one broken project", () => {
  test.each([
    "index.html",
    "kneeling-pad/index.html",
    "kneeling-pad/print/index.html",
    "kneeling-pad/print/letter/index.html",
    "kneeling-pad/patterns/index.html",
    "kneeling-pad/patterns/letter/index.html",
    "kneeling-pad/plan.json",
    "kneeling-pad-small/index.html",
    "kneeling-pad-small/plan.json",
    "schema/plan.json",
    "schema/project.json",
    "fonts/LICENSE.txt",
  ])("writes %s", (file) => {
    expect(existsSync(join(folder.output, file))).toBe(true);
  });

  test("writes nothing of the broken one", () => {
    expect(existsSync(join(folder.output, "broken"))).toBe(false);
    expect(read("index.html")).not.toContain("broken");
  });

  test("leaves out files whose name starts with an underscore", () => {
    expect(site.faults).toHaveLength(1);
    expect(existsSync(join(folder.output, "_draft"))).toBe(false);
  });

  test("says each fault as one line with its file and line, and fails", () => {
    const lines: string[] = [];
    expect(reportSite(site, (line) => lines.push(line))).toBe(1);
    const [pad, small, fault, last] = lines;
    expect(pad).toMatch(/^kneeling-pad +\d+ pages of content +1 warning$/);
    expect(small).toMatch(/^kneeling-pad-small +\d+ pages/);
    expect(fault).toMatch(
      /broken\.md:4 dimensions: expected sizes by name, got "forty"\. Write \{length: 45\}\.$/,
    );
    expect(last).toBe("1 fault. The booklets listed above were written.");
    expect(lines).toHaveLength(4);
  });

  test("prints on the country's paper, and on the other beside it", () => {
    expect(read("kneeling-pad/print/index.html")).toContain("size: 210mm 297mm");
    expect(read("kneeling-pad/print/letter/index.html")).toContain("size: 215.9mm 279.4mm");
  });

  test("asks nothing of the network", () => {
    const pages = [
      "index.html",
      "kneeling-pad/index.html",
      "kneeling-pad/print/index.html",
      "kneeling-pad/patterns/index.html",
    ];
    const wanted = pages.flatMap((page) =>
      [...read(page).matchAll(/(?:src|href)="([^"]+)"|url\("?([^)"]+)/g)].map(
        (match) => match[1] ?? match[2]!,
      ),
    );
    expect(wanted.length).toBeGreaterThan(20);
    expect(wanted.filter((url) => /^(?:[a-z]+:)?\/\//i.test(url) || url.startsWith("/"))).toEqual(
      [],
    );
  });

  test("links only to pages and places that are there", () => {
    for (const page of ["index.html", "kneeling-pad/index.html"]) {
      const html = read(page);
      for (const [, url] of html.matchAll(/<a [^>]*href="([^"]+)"/g)) {
        if (url!.startsWith("#")) expect(html).toContain(`id="${url!.slice(1)}"`);
        else expect(existsSync(join(folder.output, page, "..", url!)), url).toBe(true);
      }
    }
  });

  test("writes the same bytes again", async () => {
    const pages = [
      "index.html",
      "kneeling-pad/index.html",
      "kneeling-pad/print/index.html",
      "kneeling-pad/plan.json",
    ];
    const before = pages.map(read);
    await buildSite(openSite(folder.content, smallStages), folder);
    expect(pages.map(read)).toEqual(before);
  });
});

describe("building over what is there", () => {
  test("keeps the booklet of a file that has since been broken", async () => {
    const temp = makeTempSite({
      "one.md": goodFile,
      "two.md": goodFile.replace("Kneeling", "Second"),
    });
    await buildSite(openSite(temp.content, smallStages), temp);
    temp.write("one.md", badFile);
    await buildSite(openSite(temp.content, smallStages), temp);
    expect(readFileSync(join(temp.output, "one/index.html"), "utf8")).toContain("Kneeling pad");
    expect(existsSync(join(temp.output, "one-small/plan.json"))).toBe(true);
    temp.remove();
  });

  test("keeps everything when the build itself fails", async () => {
    const temp = makeTempSite({ "one.md": goodFile });
    const good = openSite(temp.content, smallStages);
    await buildSite(good, temp);
    const failing = {
      ...good,
      booklets: good.booklets.map((each) => ({
        ...each,
        plan: { ...each.plan, solids: null as never },
      })),
    };
    await expect(buildSite(failing, temp)).rejects.toThrow();
    expect(readFileSync(join(temp.output, "one/index.html"), "utf8")).toContain("Kneeling pad");
    temp.remove();
  });

  test("removes a booklet whose file is gone, and a PDF whose pages have changed", async () => {
    const temp = makeTempSite({ "one.md": goodFile, "two.md": goodFile });
    await buildSite(openSite(temp.content, smallStages), temp);
    for (const slug of ["one", "one-small"])
      writeFileSync(join(temp.output, slug, `${slug}.pdf`), "old print");
    temp.write("_two.md", goodFile);
    const gone = makeTempSite({ "one.md": goodFile });
    await buildSite(openSite(gone.content, smallStages), {
      content: gone.content,
      output: temp.output,
    });
    expect(existsSync(join(temp.output, "two"))).toBe(false);
    expect(existsSync(join(temp.output, "one/one.pdf"))).toBe(true);
    gone.write("one.md", goodFile.replace("Kneeling", "Changed"));
    await buildSite(openSite(gone.content, smallStages), {
      content: gone.content,
      output: temp.output,
    });
    expect(existsSync(join(temp.output, "one/one.pdf"))).toBe(false);
    temp.remove();
    gone.remove();
  });
});

describe("content that could run code", () => {
  test.each([
    "seat.11tydata.js",
    "x.js",
    "deep/x.cjs",
    "x.mjs",
    "x.ts",
    "page.njk",
    "x.11tydata.json",
  ])("%s is a fault", async (file) => {
    const temp = makeTempSite({ "one.md": goodFile, [file]: "throw new Error('it ran')" });
    const { faults } = openSite(temp.content, smallStages);
    expect(faults).toEqual([expect.stringMatching(/Move it out of content/)]);
    temp.remove();
  });

  test("does not run when the good booklets are built", async () => {
    const temp = makeTempSite({
      "one.md": goodFile,
      "one.11tydata.js": "globalThis.contentRan = true; export default {};",
      "content.11tydata.cjs": "globalThis.contentRan = true; module.exports = {};",
      "two.njk": "{{ 7 * 7 }}",
    });
    await buildSite(openSite(temp.content, smallStages), temp);
    expect(globalThis).not.toHaveProperty("contentRan");
    expect(existsSync(join(temp.output, "one/index.html"))).toBe(true);
    expect(existsSync(join(temp.output, "two"))).toBe(false);
    temp.remove();
  });

  test.each([
    ["a front matter program", "---js\n{ title: (globalThis.contentRan = true, 'x') }\n---\n"],
    [
      "a template engine of its own",
      "---\ntitle: x\nunits: cm\ntemplateEngineOverride: njk,md\n---\n{{ 7 * 7 }}\n",
    ],
    ["computed data", "---\ntitle: x\nunits: cm\neleventyComputed: {title: '{{ 7 * 7 }}'}\n---\n"],
    ["a place of its own", "---\ntitle: x\nunits: cm\npermalink: /elsewhere.html\n---\n"],
  ])("%s in a file is refused even when the project stage lets it pass", async (_, text) => {
    const temp = makeTempSite({ "one.md": text });
    await expect(buildSite(openSite(temp.content, smallStages), temp)).rejects.toThrow();
    expect(globalThis).not.toHaveProperty("contentRan");
    temp.remove();
  });
});
