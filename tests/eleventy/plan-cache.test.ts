import { mkdtempSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { writePlanJson } from "../../lib/booklet/plan-json.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import { asKept, diskCache } from "../../lib/eleventy/plan-cache.ts";
import { realStages } from "../../lib/eleventy/real-stages.ts";
import type { Stages } from "../../lib/eleventy/stages.ts";
import { type TempSite, makeTempSite } from "../fixtures/temp-site.ts";

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
let computed = 0;
const counting: Stages = {
  ...realStages,
  computePlan: (project) => {
    computed += 1;
    return realStages.computePlan(project);
  },
};
const open = () => openSite(site.content, counting, null, diskCache(folder));
const bytes = () => {
  const opened = open();
  return opened.booklets.map(({ plan, booklet, otherBooklet }) =>
    [writePlanJson(plan), JSON.stringify(booklet), JSON.stringify(otherBooklet)].join("\n"),
  );
};
const entries = () => readdirSync(folder).map((name) => join(folder, name));

beforeEach(() => {
  site = makeTempSite({ "small-shelf.md": shelf });
  mkdirSync(".cache", { recursive: true });
  folder = mkdtempSync(join(".cache", "plans-"));
  computed = 0;
});
afterEach(() => {
  site.remove();
  rmSync(folder, { recursive: true, force: true });
});

describe("keeping plans and drawings from build to build", () => {
  test("an unchanged project is not computed again, and gives the same bytes", () => {
    const fresh = bytes();
    const kept = bytes();
    expect(computed).toBe(1);
    expect(kept).toEqual(fresh);
  });

  test("a build without a cache gives those bytes too", () => {
    const kept = [bytes(), bytes()][1];
    const plain = openSite(site.content, realStages, null).booklets.map(
      ({ plan, booklet, otherBooklet }) =>
        [writePlanJson(plan), JSON.stringify(booklet), JSON.stringify(otherBooklet)].join("\n"),
    );
    expect(plain).toEqual(kept);
  });

  test("a changed size is computed anew", () => {
    bytes();
    site.write("small-shelf.md", shelf.replace("length: 45", "length: 46"));
    bytes();
    expect(computed).toBe(2);
    expect(entries()).toHaveLength(2);
  });

  test.each([
    ["cut short", (text: string) => text.slice(0, text.length / 2)],
    ["changed by a digit", (text: string) => text.replace(/45/, "46")],
    ["empty", () => ""],
  ])("an entry that is %s is left aside and written again", (_, spoil) => {
    const fresh = bytes();
    const [file] = entries();
    const good = readFileSync(file!, "utf8");
    writeFileSync(file!, spoil(good));
    expect(bytes()).toEqual(fresh);
    expect(computed).toBe(2);
    expect(readFileSync(file!, "utf8")).toBe(good);
  });

  test("leaves no half-written file behind", () => {
    bytes();
    expect(entries().every((file) => file.endsWith(".json"))).toBe(true);
  });

  test("a folder that cannot be written is no fault", () => {
    const file = join(folder, "not-a-folder");
    writeFileSync(file, "");
    const opened = openSite(site.content, realStages, null, diskCache(join(file, "deep")));
    expect(opened.faults).toEqual([]);
    expect(opened.booklets).toHaveLength(1);
  });

  test("a minus nought is kept as a nought, fresh or not", () => {
    expect(Object.is(asKept({ at: -0 }).at, 0)).toBe(true);
  });
});
