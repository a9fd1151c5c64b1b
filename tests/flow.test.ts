import { readFileSync } from "node:fs";
import { globSync } from "tinyglobby";
import { expect, test } from "vitest";

const stages = [
  "plane",
  "units",
  "project",
  "solids",
  "panels",
  "seams",
  "packing",
  "estimate",
  "checks",
  "steps",
  "drawing",
  "booklet",
  "eleventy",
];

const files = globSync("lib/*/**/*.ts");

test("the flow test sees the library", () => {
  expect(files.length).toBeGreaterThan(50);
});

test.each(files)("%s imports only from its own stage or one above", (file) => {
  const own = stages.indexOf(file.split("/")[1] ?? "");
  expect(own).toBeGreaterThanOrEqual(0);
  const imported = [...readFileSync(file, "utf8").matchAll(/from "\.\.\/(\w+)\//g)].map(
    (m) => m[1] ?? "",
  );
  expect(imported.filter((stage) => stages.indexOf(stage) > own)).toEqual([]);
});
