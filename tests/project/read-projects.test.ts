import { describe, expect, test } from "vitest";
import { loopArea, shapeArea } from "../../lib/plane/loop-area.ts";
import { placeFault } from "../../lib/project/place-fault.ts";
import { ProjectError } from "../../lib/project/project-error.ts";
import { readProjects } from "../../lib/project/read-projects.ts";
import type { BlockSpec, Project } from "../../lib/project/types.ts";
import { fixture, projectOf, projectText } from "./project-text.ts";

const read = (name: string): Project => {
  const { projects, faults } = readProjects([fixture(name)]);
  expect(faults.map(({ message }) => message)).toEqual([]);
  const [project] = projects;
  if (project === undefined) throw new Error(`${name} built nothing`);
  return project;
};
// International yard and pound agreement, 1959: 25.4 mm exactly. Rounded as the program rounds.
const inches = (count: number) => Math.round(count * 25.4 * 1e9) / 1e9;
const inch = 25.4;
const toInches = (mm: number) => Math.round((mm / inch) * 1e6) / 1e6;

describe("reading a sound project", () => {
  test.each([
    "seat-block",
    "round-pouf",
    "bay-pad",
    "batten-crate",
    "every-key",
    "contract-example",
  ])("%s has no fault, and reads the same twice", (name) => {
    expect(readProjects([fixture(name)]).faults).toEqual([]);
    expect(readProjects([fixture(name)])).toEqual(readProjects([fixture(name)]));
  });

  test("sizes and places of the block seat are in millimetres", () => {
    const { solids, stock, units, round } = read("seat-block");
    expect([units, round]).toEqual(["in", 1 / 8]);
    const boxes = solids[0]?.blocks.map((block) => [
      block.id,
      block.kind === "box" ? block.size.map(toInches) : null,
      block.at.map(toInches),
    ]);
    expect(boxes).toEqual([
      ["back", [24, 6, 18], [0, 12, 0]],
      ["arm-left", [5, 12, 12], [0, 0, 0]],
      ["arm-right", [5, 12, 12], [19, 0, 0]],
      ["seat", [14, 12, 6], [5, 0, 0]],
    ]);
    expect(stock[0]).toMatchObject({
      kind: "slab",
      size: [inches(36), inches(22), inches(6)],
      have: 2,
      kerf: 0,
    });
    expect(stock[1]).toMatchObject({ width: inches(54), direction: "one-way", have: 1828.8 });
  });

  test("every key reaches the project", () => {
    const project = read("every-key");
    expect(project).toMatchObject({
      slug: "every-key",
      file: "content/every-key.md",
      units: "in",
      round: 1 / 16,
      audience: { kind: "stature", stature: 1180 },
      country: "US",
      language: "en-US",
      time: "two afternoons",
      skill: "can sew a straight seam",
      author: "The bench workshop",
      version: "1.20",
      licence: "CC-BY-4.0",
      dimensions: { width: inches(40), depth: inches(20), high: inches(16), thick: inches(2.5) },
      copies: 12,
      variant: null,
      buy: [{ item: "screws", quantity: 12, unit: "pack", have: 1, price: 3.5 }],
      made: {
        date: "2026-02-28",
        notes: "The arms came out a little proud.",
        measured: { width: inches(39.875), depth: inches(20) },
        photo: "photos/bench.jpg",
      },
    });
  });

  test("every kind of stock reaches the project", () => {
    const { stock } = read("every-key");
    expect(stock.map(({ kind, label }) => [kind, label])).toEqual([
      ["slab", "seat foam"],
      ["fabric", "leaf print"],
      ["sheet", "birch ply"],
      ["board", "pine strip"],
      ["zip", "zip chain"],
      ["zip", "zips"],
    ]);
    const [, cloth, ply, strip, chain, zips] = stock;
    expect(cloth).toMatchObject({ have: inches(45), shrink: 0.03, isTwoFaced: true });
    // 12 for a yard of 0.9144 m
    expect(cloth?.price).toBeCloseTo(12 / 0.9144, 9);
    expect(ply).toMatchObject({ grain: "across", thickness: inches(15 / 32) });
    expect(strip).toMatchObject({ section: [inches(1.5), inches(0.75)], length: 2438.4 });
    expect(chain).toMatchObject({ lengths: [], have: [inches(20)] });
    expect(zips).toMatchObject({
      lengths: [inches(12), inches(18), inches(24)],
      have: [inches(10), inches(12)],
    });
  });

  test("every kind of block reaches the project", () => {
    const kinds = read("every-key").solids[0]?.blocks.map((block: BlockSpec) => block.kind);
    expect(kinds).toEqual(["box", "prism", "wedge", "cylinder", "rounded", "frustum"]);
  });

  test("every key of a cover reaches the project", () => {
    const [bench, pillow] = read("every-key").solids;
    expect(bench?.cover).toEqual({
      fabric: "print",
      seamAllowance: inches(5 / 8),
      allowances: { zip: null, opening: null },
      print: { centre: [], match: [] },
      ease: [inch / 4, inch / 4, 0],
      panels: [
        { name: "front", faces: ["base/front", "nose/around"] },
        { name: "top", faces: ["base/top"] },
      ],
      open: [
        { kind: "face", face: "base/back" },
        { kind: "between", faces: ["base/underside", "base/left"], length: inches(8) },
      ],
      hinge: "base/underside",
      closing: { kind: "zip", stock: "zips" },
      piping: { cord: inches(5 / 32), along: ["base/top", "cap/around"], cut: "straight" },
      attach: [{ id: "loop", piece: "loop", on: "wing/side-2", at: ["centre", inch] }],
      up: { "base/top": "left", "ramp/slope": "back" },
      anchor: "tacks",
      neaten: "overedge",
    });
    expect(pillow?.cover).toMatchObject({
      ease: [0, 0, 0],
      panels: "upright",
      open: null,
      closing: { kind: "ties", stock: null, across: "one/back" },
      seamAllowance: inch / 2,
      allowances: { zip: inches(3 / 4), opening: inch },
      print: { centre: ["one/top"], match: [["one/top", "one/front"]] },
    });
  });

  test("a cover made smaller has negative ease", () => {
    expect(read("bay-pad").solids[0]?.cover?.ease).toEqual([-10, -10, -10]);
    expect(read("round-pouf").solids[0]?.cover?.ease).toEqual([-10, -10, 0]);
  });

  test("pieces stand on their lowest-left corner, counter-clockwise, circles as arcs", () => {
    const { pieces } = read("every-key");
    const byId = new Map(pieces.map((piece) => [piece.id, piece]));
    expect(byId.get("lid")?.size).toEqual([inches(20), inches(10)]);
    expect(loopArea(byId.get("lid")?.outline.outer ?? [])).toBeCloseTo(200 * inch ** 2, 6);
    // The two holes of the lid: a circle of 1 in and a triangle of 2 × 2 in.
    const left = 200 - Math.PI / 4 - 2;
    const lid = byId.get("lid");
    expect(lid && shapeArea(lid.outline) / inch ** 2).toBeCloseTo(left, 6);
    expect(lid?.outline.holes.every((hole) => loopArea(hole) < 0)).toBe(true);
    expect(byId.get("round")?.outline.outer.map(({ kind }) => kind)).toEqual(["arc", "arc"]);
    expect(byId.get("round")?.size[0]).toBeCloseTo(inches(12), 9);
    expect(byId.get("rail")?.size).toEqual([inches(38.5), inches(1.5)]);
  });

  test("the outline of a prism keeps the author's order, even clockwise", () => {
    const solids = "{pad: {blocks: {slab: {prism: [[0,0],[0,4],[3,0]], height: 2}}}}";
    const block = projectOf(projectText({ solids })).solids[0]?.blocks[0];
    expect(block?.kind === "prism" && block.outline).toEqual([
      [0, 0],
      [0, 40],
      [30, 0],
    ]);
  });

  test("the contract's own example reads as it says", () => {
    const project = read("contract-example");
    // The name of the solid serves for its only block, and back for the side that faces the back.
    expect(project.solids[0]?.cover).toMatchObject({
      open: [{ kind: "face", face: "slab/side-3" }],
      piping: { cord: 5, along: ["slab/top"] },
      attach: [{ id: "handle", on: "slab/side-1", at: ["centre", 40] }],
    });
    expect(project.words).toEqual([
      {
        kind: "prose",
        markdown: "The pad is 120 cm long; 87 cm of batten goes round it.",
        line: 40,
      },
    ]);
  });

  test("words come apart at boxes and figures, with their lines", () => {
    expect(read("every-key").words.map(({ kind, line }) => [kind, line])).toEqual([
      ["prose", 73],
      ["figure", 75],
      ["caution", 78],
      ["tip", 82],
      ["step", 86],
      ["before", 90],
      ["prose", 93],
    ]);
  });

  test("the lines of fields are those of the file", () => {
    const project = read("every-key");
    expect(project.lines["title"]).toBe(2);
    expect(project.lines["solids.bench.cover.seamAllowance"]).toBe(38);
    const fault = placeFault(project, {
      field: "solids.bench.cover.panels.1",
      fault: "cannot lie flat",
      fix: "Take base/top out",
    });
    expect(fault).toBeInstanceOf(ProjectError);
    const word = placeFault(project, { field: "words.4", fault: "is not a step", fix: "Mend it" });
    expect(word.line).toBe(86);
    expect(fault.message).toBe(
      "content/every-key.md:42 solids.bench.cover.panels.1: cannot lie flat. Take base/top out.",
    );
  });
});

describe("variants", () => {
  test("each is a project of its own, worked out anew", () => {
    const { projects } = readProjects([fixture("every-key")]);
    expect(projects.map(({ slug, title, variant }) => [slug, title, variant])).toEqual([
      ["every-key", "Corner bench with everything", null],
      ["every-key-low", "Corner bench with everything, low", "low"],
      ["every-key-wide-low", "Corner bench with everything, wide low", "wide-low"],
    ]);
    const [, , wide] = projects;
    // depth is width / 2, and width is 48 here
    expect(wide?.dimensions).toMatchObject({
      width: inches(48),
      depth: inches(24),
      high: inches(12),
    });
    expect(wide?.words[0]).toMatchObject({ markdown: "The bench is 48 in wide." });
    expect(wide?.made).toBeNull();
  });

  test("two booklets of one name are a fault", () => {
    const variants = "{small: {length: 90}}";
    const { projects, faults } = readProjects([
      { file: "content/pad.md", text: projectText({ variants }) },
      { file: "content/pad-small.md", text: projectText() },
    ]);
    expect(projects.map(({ slug }) => slug)).toEqual(["pad", "pad-small"]);
    expect(faults.map(({ message }) => message)).toEqual([
      "content/pad-small.md:2 title: builds the booklet pad-small, which content/pad.md builds too. Rename the file or the variant.",
    ]);
  });
});

describe("reading many files", () => {
  test("all faults of all files come in one run, beside the sound projects", () => {
    const { projects, faults } = readProjects([
      fixture("dozen-faults"),
      fixture("bay-pad"),
      { file: "content/bad.md", text: projectText({ copies: "0", title: null }) },
    ]);
    expect(projects.map(({ slug }) => slug)).toEqual(["bay-pad"]);
    expect(new Set(faults.map(({ file }) => file))).toEqual(
      new Set(["content/dozen-faults.md", "content/bad.md"]),
    );
    expect(faults.filter(({ file }) => file === "content/bad.md")).toHaveLength(2);
  });

  test("faults of form, of meaning and of the text are found together", () => {
    const { faults } = readProjects([fixture("dozen-faults")]);
    expect(faults.map(({ line, field }) => `${line} ${field}`)).toEqual([
      "4 sumary",
      "5 permalink",
      "6 dimensions.in",
      "6 dimensions.thick",
      "8 stock.seat-foam.density",
      "9 stock.leaf-print.direction",
      "9 stock.leaf-print.width",
      "10 stock.thread.kind",
      "13 solids.seat.foam",
      "15 solids.seat.blocks.pad.box.1",
      "16 solids.seat.blocks.bow.prism",
      "18 solids.seat.cover.fabric",
      "19 solids.seat.cover.seamAllowance",
      "20 solids.seat.cover.open.0",
      "20 solids.seat.cover.open.1",
      "23 pieces.tab.cut",
      "23 pieces.tab.size.0",
      "24 copies",
      "26 text",
      "26 text",
      "28 text",
      "30 text",
      "34 text",
    ]);
  });
});
