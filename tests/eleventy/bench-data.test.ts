import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { readBenchSets, runBench } from "../../lib/eleventy/bench-data.ts";
import { boardSetShape, laySetShape, sheetSetShape } from "../../lib/eleventy/bench-shapes.ts";

const good = { name: "own", capacity: 100, sizes: [45, 36], demand: [2, 3] };

describe("running sets one by one", () => {
  const work = {
    measure: ({ name }: { readonly name: string }) => {
      if (name === "bad") throw new Error("no way\n    at some line of code");
      return { name };
    },
    heading: "heading",
    line: ({ name }: { readonly name: string }) => name,
    close: () => "closed",
  };
  const sets = ["one", "bad", "two"].map((name) => ({ name }));
  const run = (faults: readonly string[], given: typeof sets, json: boolean) => {
    const [out, err]: [string[], string[]] = [[], []];
    const spies = [
      vi.spyOn(console, "log").mockImplementation((text: string) => void out.push(text)),
      vi.spyOn(console, "error").mockImplementation((text: string) => void err.push(text)),
    ];
    const code = runBench({ sets: given, faults }, { ...work, json });
    spies.forEach((spy) => spy.mockRestore());
    return { code, out, err };
  };

  // A set whose search failed used to end the run with a stack trace.
  test("one that fails is told in a line, the others go on, and the exit code says so", () => {
    const { code, out, err } = run([], sets, false);
    expect(out).toEqual(["heading", "one", "two", "closed"]);
    expect(err).toEqual(["bad: cannot be measured (no way); it is left out"]);
    expect(code).toBe(1);
  });

  test("JSON stays JSON whatever fails; all well is 0", () => {
    expect(JSON.parse(run(["x.json: odd"], sets, true).out.join("\n"))).toHaveLength(2);
    expect(run(["x.json: odd"], [], true)).toMatchObject({ code: 1, out: ["[]"] });
    expect(run([], sets.slice(0, 1), true).code).toBe(0);
  });
});

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
    expect(read().faults.join("\n")).toContain("no set of this kind in it");
  });

  test("looks into the kind's own folder, names a set after its file, adds up a size listed twice", () => {
    mkdirSync(join(folder, "1d"));
    const { capacity } = good;
    write("1d/plain.json", JSON.stringify({ capacity, sizes: [45, 36, 45], demand: [2, 3, 4] }));
    expect(read().sets).toEqual([{ name: "plain", capacity, sizes: [45, 36], demand: [6, 3] }]);
  });

  test("counts decimal sizes in whole units of their own, and leaves out what is not wanted", () => {
    write("odd.json", JSON.stringify({ capacity: 10.5, sizes: [3.5, 1.75, 2], demand: [3, 4, 0] }));
    expect(read().sets).toEqual([{ name: "odd", capacity: 6, sizes: [2, 1], demand: [3, 4] }]);
    const item = { size: [0.4, 25], value: 7, demand: 2 };
    write("odd.json", JSON.stringify({ sheet: [1.2, 100], items: [item] }));
    expect(readBenchSets(folder, "rect", sheetSetShape).sets).toEqual([
      { name: "odd", sheet: [3, 4], items: [{ ...item, size: [1, 1] }] },
    ]);
  });

  test("takes sheets and lays by their own shape", () => {
    const sheet = { name: "s", sheet: [250, 250], items: [{ size: [167, 183], value: 30728 }] };
    write("set.json", JSON.stringify(sheet));
    expect(readBenchSets(folder, "rect", sheetSetShape).sets).toMatchObject([sheet]);
    const { faults } = readBenchSets(folder, "irregular", laySetShape);
    expect(faults[0]).toMatch(/^set.json: stripWidth/);
  });
});
