import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import type { Stages } from "../../lib/eleventy/stages.ts";
import { writeArchive } from "../../lib/eleventy/write-archive.ts";
import { smallStages } from "../fixtures/small-stages.ts";
import { goodFile, makeTempSite } from "../fixtures/temp-site.ts";

const folder = makeTempSite({ "kneeling-pad.md": goodFile, "photos/pad.svg": "<svg/>" });

/** The small stages, with a record of what was made. */
const madeStages: Stages = {
  ...smallStages,
  computePlan: (project) => smallStages.computePlan(withMade(project)),
  readProjects: (files) => {
    const read = smallStages.readProjects(files);
    return { ...read, projects: read.projects.map(withMade) };
  },
};

function withMade<T extends { readonly made: unknown }>(project: T): T {
  const made = {
    date: "2026-03-14",
    notes: "Sat on daily.",
    measured: {},
    photo: "photos/pad.svg",
  };
  return { ...project, made };
}

let archive: string;
let html: string;

beforeAll(async () => {
  const site = openSite(folder.content, madeStages);
  expect(site.faults).toEqual([]);
  await buildSite(site, folder);
  archive = writeArchive(site.booklets[0]!, folder.output);
  html = readFileSync(join(archive, "data/kneeling-pad.html"), "utf8");
});
afterAll(() => folder.remove());

test("the photo of what was made lies beside the booklet, and the record shows it", () => {
  expect(existsSync(join(folder.output, "kneeling-pad/photos/pad.svg"))).toBe(true);
  const page = readFileSync(join(folder.output, "kneeling-pad/index.html"), "utf8");
  expect(page).toContain('src="../kneeling-pad/photos/pad.svg"');
});

test("the archived page needs no other file", () => {
  expect(html).toContain("data:font/woff2;base64,");
  expect(html).toContain("data:image/svg+xml;base64,");
  const outside = [...html.matchAll(/(?:src|href)="(?!#|data:|https?:)([^"]*)"|url\((?!data:|#)/g)];
  expect(outside.map(([found]) => found)).toEqual([]);
});

test("it carries the project file and the plan", () => {
  expect(html).toContain("title: Kneeling pad");
  const json = /<script type="application\/json" id="plan">([\s\S]*?)<\/script>/.exec(html)![1]!;
  const plan = JSON.parse(json) as { format: string };
  expect(plan.format).toBe("slipcase-plan/1");
});

// RFC 8493, section 2.1.3: one line a file, the checksum in hexadecimal, then the path.
test("every file has its checksum, and every checksum its file", () => {
  const lines = readFileSync(join(archive, "manifest-sha512.txt"), "utf8").trim().split("\n");
  const files = lines.map((line) => {
    const [sum, path] = line.split("  ") as [string, string];
    const bytes = readFileSync(join(archive, path));
    expect(createHash("sha512").update(bytes).digest("hex")).toBe(sum);
    return path;
  });
  expect(files).toEqual(["data/kneeling-pad.html", "data/kneeling-pad.md", "data/plan.json"]);
});
