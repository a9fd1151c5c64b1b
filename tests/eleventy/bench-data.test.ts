import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readBenchSets } from "../../lib/eleventy/bench-data.ts";
import { boardSetShape, laySetShape, sheetSetShape } from "../../lib/eleventy/bench-shapes.ts";

const good = { name: "own", capacity: 100, sizes: [45, 36], demand: [2, 3] };

describe("reading a folder of sets", () => {
  let folder = "";
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "bench-"));
  });
  afterEach(() => rmSync(folder, { recursive: true }));
  const write = (name: string, text: string): void => writeFileSync(join(folder, name), text);
  const read = () => readBenchSets(folder, "1d", boardSetShape);

  // A broken file used to end the whole bench with a message that did not say which file it was.
  test.each([
    { name: "no JSON", text: "{bad", says: "odd.json: cannot be read as JSON" },
    { name: "an empty file", text: "", says: "odd.json: cannot be read as JSON" },
    { name: "a word", text: '"hello"', says: "odd.json: expected object" },
    { name: "an empty list", text: "[]", says: "odd.json: holds no set" },
    {
      name: "a missing key",
      text: JSON.stringify({ ...good, capacity: undefined }),
      says: "odd.json: capacity: expected number",
    },
    {
      name: "a size that no board holds",
      text: JSON.stringify({ ...good, sizes: [450, 36] }),
      says: "odd.json: has a size over the capacity",
    },
    {
      name: "too few demands",
      text: JSON.stringify({ ...good, demand: [2] }),
      says: "odd.json: needs as many demands as sizes",
    },
  ])("says of $name in one line what is wrong, and reads the others", ({ text, says }) => {
    write("good.json", JSON.stringify([good, good]));
    write("odd.json", text);
    const { sets, faults } = read();
    expect(sets).toEqual([good, good]);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(says);
    expect(faults[0]).not.toContain("\n");
  });

  test("says so of a folder that is not there, is empty, or holds no such set", () => {
    const none = join(folder, "none");
    expect(() => readBenchSets(none, "1d", boardSetShape)).toThrow("there is no such folder");
    expect(read).toThrow("there is no .json file in it");
    write("odd.json", "[1]");
    expect(read).toThrow("no set of this kind in it");
  });

  test("looks into the kind's own folder, names a set after its file, adds up a size listed twice", () => {
    mkdirSync(join(folder, "1d"));
    const { capacity } = good;
    write("1d/plain.json", JSON.stringify({ capacity, sizes: [45, 36, 45], demand: [2, 3, 4] }));
    expect(read().sets).toEqual([{ name: "plain", capacity, sizes: [45, 36], demand: [6, 3] }]);
  });

  test("takes sheets and lays by their own shape", () => {
    const sheet = { name: "s", sheet: [250, 250], items: [{ size: [167, 184], value: 30728 }] };
    write("set.json", JSON.stringify(sheet));
    expect(readBenchSets(folder, "rect", sheetSetShape).sets).toMatchObject([sheet]);
    expect(() => readBenchSets(folder, "irregular", laySetShape)).toThrow(/stripWidth/);
  });
});
