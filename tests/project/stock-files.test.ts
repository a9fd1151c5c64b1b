import { describe, expect, test } from "vitest";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { writeOffcuts } from "../../lib/booklet/write-offcuts.ts";
import { checkContentFiles } from "../../lib/project/check-content-files.ts";
import { readProjects } from "../../lib/project/read-projects.ts";

const shed = (text: string) => ({ file: "content/stock/shed.yaml", text });
const stool = (front: string) => ({
  file: "content/stool.md",
  text: `---\ntitle: Stool\nunits: cm\n${front}\npieces:\n  leg: {stock: lath, length: 30, cut: 4}\n---\nText.\n`,
});
const lath = "units: mm\nstock:\n  lath: {kind: board, section: [34, 19], length: 700, have: 2}\n";
const told = (...files: Parameters<typeof readProjects>[0][number][]) =>
  readProjects(files).faults.map(({ message }) => message);

describe("a stock file that projects name", () => {
  test("brings its stock in its own unit", () => {
    const { projects, faults } = readProjects([shed(lath), stool("stockFiles: [shed]")]);
    expect(faults).toEqual([]);
    expect(projects).toHaveLength(1);
    expect(projects[0]!.stock).toMatchObject([{ id: "lath", length: 700, have: 2 }]);
  });

  test("may lie in the content folder, and nothing else beside it", () => {
    expect(checkContentFiles(["content/stock/shed.yaml"])).toEqual([]);
    expect(checkContentFiles(["content/shed.yaml", "content/stock/shed.js"])).toHaveLength(2);
  });

  test("has its faults told in one line with its own name and line", () => {
    const faulty = lath.replace("length: 700", "length: 7o0");
    expect(told(shed(faulty), stool("stockFiles: [shed]"))).toEqual([
      expect.stringMatching(/^content\/stock\/shed\.yaml:3 stock\.lath\.length: expected a length/),
      expect.stringMatching(
        /^content\/stool\.md:4 .*names shed, which has faults of its own\. Mend/,
      ),
    ]);
  });

  test.each([
    ["units: mm\n", "stock/shed.yaml:1 stock: is missing"],
    ["units: furlong\nstock: {}\n", "stock/shed.yaml:1 units: expected one of in, cm, mm"],
    [lath.replace("have: 2", "hav: 2"), "stock.lath.hav: is not a key that is known here"],
    ["units: mm\nstock: [\n", "stock/shed.yaml"],
  ])("with the text %j is refused", (text, fault) => {
    const [first] = told(shed(text));
    expect(first).toContain(fault);
  });

  test("that is not there is named, with the nearest that is", () => {
    expect(told(shed(lath), stool("stockFiles: [shet]"))[0]).toMatch(
      /names shet, which is no stock file.*shed/,
    );
  });

  test("may not bring a name that is taken", () => {
    const own = "stockFiles: [shed]\nstock:\n  lath: {kind: board, section: [3, 2], length: 100}";
    expect(told(shed(lath), stool(own))[0]).toContain("brings lath, which is listed already");
  });
});

describe("what a project leaves over", () => {
  const bench = {
    file: "content/bench.md",
    text: `---
title: Bench
units: cm
stock:
  foam: {kind: slab, size: [200, 60, 8], have: 1, density: 35 kg/m3}
  ply: {kind: sheet, size: [122, 61], thickness: 12 mm, kerf: 3 mm, grain: along}
  lath: {kind: board, section: [34 mm, 19 mm], length: 240, kerf: 3 mm}
solids: {pad: {foam: foam, blocks: {seat: {box: [110, 40, 8]}}}}
pieces:
  top: {stock: ply, size: [70, 40]}
  rail: {stock: lath, length: 100, cut: 1}
---
Text.
`,
  };

  test("is a stock file that reads without a fault, each offcut as large as planned", () => {
    const [project] = readProjects([bench]).projects;
    const plan = computePlan(project!);
    const text = writeOffcuts(plan)!;
    const user = stool("stockFiles: [bench]");
    const again = readProjects([
      { file: "content/stock/bench.yaml", text },
      { ...user, text: user.text.replace("stock: lath", "stock: lath-end-1") },
    ]);
    expect(again.faults).toEqual([]);
    const left = [...plan.slabs, ...plan.sheets, ...plan.boards].flatMap(({ used }) =>
      used.flatMap(({ offcuts }) => offcuts.map(({ size }) => size.map(Math.floor))),
    );
    const sizes = again.projects[0]!.stock.map((stock) =>
      stock.kind === "board" ? [stock.length] : "size" in stock ? [...stock.size] : [],
    );
    expect(sizes).toEqual(left);
    expect(again.projects[0]!.stock[0]).toMatchObject({ kind: "slab", density: 35, have: 1 });
  });

  test("is nothing where nothing is left", () => {
    const exact = bench.text
      .replace("box: [110, 40, 8]", "box: [200, 60, 8]")
      .replace("size: [70, 40]", "size: [122, 61]")
      .replace("length: 100, cut", "length: 240, cut");
    const [project] = readProjects([{ ...bench, text: exact }]).projects;
    expect(writeOffcuts(computePlan(project!))).toBeNull();
  });
});
