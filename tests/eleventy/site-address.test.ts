import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { siteAddress } from "../../lib/eleventy/site-address.ts";

mkdirSync(".cache", { recursive: true });
const folder = mkdtempSync(join(".cache", "address-"));
afterAll(() => rmSync(folder, { recursive: true }));

function packageWith(homepage?: unknown): string {
  const file = join(folder, "package.json");
  writeFileSync(file, JSON.stringify({ homepage }));
  return file;
}

test.each([
  [undefined, null],
  ["https://example.org", "https://example.org"],
  ["https://example.org/shelf/", "https://example.org/shelf"],
])("a homepage of %s gives %s", (homepage, address) => {
  expect(siteAddress(packageWith(homepage))).toBe(address);
});

test.each([["example.org"], ["ftp://example.org"], [7]])(
  "%s is refused in one line",
  (homepage) => {
    expect(() => siteAddress(packageWith(homepage))).toThrow(/package\.json: homepage: expected/);
  },
);
