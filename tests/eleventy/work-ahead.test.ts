import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { openKept } from "../../lib/eleventy/open-kept.ts";
import { diskCache } from "../../lib/eleventy/plan-cache.ts";
import { readContent } from "../../lib/eleventy/read-content.ts";
import { realStages } from "../../lib/eleventy/real-stages.ts";
import { workAhead } from "../../lib/eleventy/work-ahead.ts";
import type { Project } from "../../lib/project/types.ts";
import { type TempSite, badFile, makeTempSite } from "../fixtures/temp-site.ts";

const shelf = `---
title: Small shelf
units: cm
stock:
  lath: {kind: board, section: [3, 2], length: 200, kerf: 0.3, have: 2}
pieces:
  rail: {stock: lath, length: 45, cut: 6}
---
A shelf.
`;

let site: TempSite;
let folder: string;
const cacheOf = (name: string): string => join(folder, name);
const projects = () => readContent(site.content, realStages).projects;
const keptIn = (name: string): readonly boolean[] => {
  const cache = diskCache(cacheOf(name));
  return projects().map((project) => cache.has(project));
};

beforeEach(() => {
  site = makeTempSite({
    "small-shelf.md": shelf,
    "long-shelf.md": shelf.replace("Small", "Long").replace("45", "90"),
    "broken.md": badFile,
  });
  mkdirSync(".cache", { recursive: true });
  folder = mkdtempSync(join(".cache", "ahead-"));
});
afterEach(() => {
  site.remove();
  rmSync(folder, { recursive: true, force: true });
});

/** Every file of a folder with its bytes. */
function bytesOf(root: string): ReadonlyMap<string, string> {
  const files = readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
  return new Map(files.map((file) => [file.slice(root.length), readFileSync(file, "base64")]));
}

async function build(cache: string, threads: number) {
  const opened = await openKept(site.content, { folder: cacheOf(cache), threads });
  rmSync(site.output, { recursive: true, force: true });
  await buildSite(opened, site);
  return { files: bytesOf(site.output), faults: opened.faults };
}

describe("working out projects in threads", () => {
  test("gives the same bytes as one after the other, and as a warm cache", async () => {
    const alone = await build("alone", 0);
    const sideBySide = await build("threads", 2);
    const warm = await build("threads", 2);
    expect([...alone.files.keys()]).toContain("/small-shelf/plan.json");
    expect([...alone.files.keys()]).toContain("/long-shelf/print/index.html");
    expect(alone.faults.join("\n")).toContain("broken.md");
    expect(sideBySide).toEqual(alone);
    expect(warm).toEqual(alone);
    expect(bytesOf(cacheOf("threads"))).toEqual(bytesOf(cacheOf("alone")));
  });

  test("leaves every project in the cache", async () => {
    await workAhead(projects(), { threads: 2, folder: cacheOf("ahead"), address: null });
    expect(keptIn("ahead")).toEqual([true, true]);
  });

  test.each([
    ["one project", 1, 2],
    ["one thread", 2, 1],
  ])("starts none for %s", async (_, count, threads) => {
    const some = projects().slice(0, count);
    await workAhead(some, { threads, folder: cacheOf("none"), address: null });
    expect(existsSync(cacheOf("none"))).toBe(false);
  });

  test.each([
    ["that cannot be worked out", { slug: "hollow" }],
    ["that cannot be sent", { slug: "odd", act: () => 1 }],
  ])("passes over a project %s and goes on", async (_, bad) => {
    const some = [bad as unknown as Project, ...projects(), bad as unknown as Project];
    await workAhead(some, { threads: 2, folder: cacheOf("ahead"), address: null });
    expect(keptIn("ahead")).toEqual([true, true]);
  });

  test("a thread that cannot start loses nothing", async () => {
    const order = {
      threads: 2,
      folder: cacheOf("ahead"),
      address: (() => null) as unknown as null,
    };
    await expect(workAhead(projects(), order)).resolves.toBeUndefined();
    const opened = await openKept(site.content, { folder: cacheOf("ahead"), threads: 0 });
    expect(opened.booklets).toHaveLength(2);
  });
});
