import { describe, expect, test } from "vitest";
import { buildBooklet } from "../../lib/booklet/build-booklet.ts";
import { papers } from "../../lib/booklet/paper.ts";
import { smallFigures } from "../fixtures/small-figures.ts";
import { smallPlan } from "../fixtures/small-plan.ts";

const booklet = buildBooklet(smallPlan, smallFigures);
const page = <Kind extends (typeof booklet.pages)[number]["kind"]>(kind: Kind) =>
  booklet.pages.find((each): each is Extract<typeof each, { kind: Kind }> => each.kind === kind)!;

describe("a booklet", () => {
  test("has its pages in the order they are needed", () => {
    expect(booklet.pages.map(({ kind }) => kind)).toEqual([
      "cover",
      "start",
      "words",
      "materials",
      "foam",
      "ways",
      "piece",
      "piece",
      "piece",
      "piece",
      "piece",
      "lay",
      "steps",
      "steps",
      "steps",
      "steps",
      "finish",
      "record",
      "sources",
    ]);
  });

  test("leaves out pages with nothing to say", () => {
    const bare = buildBooklet(
      {
        ...smallPlan,
        solids: [],
        covers: [],
        slabs: [],
        lays: [],
        materials: [],
        steps: [],
        project: { ...smallPlan.project, words: [], stock: [] },
      },
      smallFigures,
    );
    expect(bare.pages.map(({ kind }) => kind)).toEqual([
      "cover",
      "start",
      "piece",
      "record",
      "sources",
    ]);
  });

  test("lists every later page in its contents, once", () => {
    const targets = page("start").contents.map(({ target }) => target);
    expect(targets).toEqual(booklet.pages.slice(2).map(({ id }) => id));
    expect(new Set(targets).size).toBe(targets.length);
  });

  test("puts the gravest finding first", () => {
    expect(page("start").notices.map(({ signal }) => signal)).toEqual(["WARNING", "NOTICE"]);
  });

  test("gathers the tools of all steps, each once", () => {
    expect(page("start").tools).toEqual([
      "marker",
      "straightedge",
      "electric knife",
      "tailor's chalk",
      "cloth scissors",
      "sewing machine",
      "zip foot",
    ]);
  });

  test("numbers steps right through its groups", () => {
    const numbers = booklet.pages.flatMap((each) =>
      each.kind === "steps" ? each.steps.map(({ number }) => number) : [],
    );
    expect(numbers).toEqual(Array.from({ length: 12 }, (_, i) => i + 1));
  });

  test("gives no two things one id", () => {
    const ids = JSON.stringify(booklet.pages).match(/"id":"[^"/]+"/g)!;
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("writes every length in the project's unit", () => {
    expect(page("cover").sizes[0]!.value).toBe("45 × 40 × 8 cm");
    expect(page("lay").facts.find(({ label }) => label === "To buy")!.value).toBe("0.3 m");
  });

  // ISO 216 A4 for Britain; ANSI/ASME Y14.1 size A for the United States and Canada.
  test.each([
    [{ country: "GB", units: "in" }, "a4"],
    [{ country: "US", units: "cm" }, "letter"],
    [{ country: "CA", units: "cm" }, "letter"],
    [{ country: null, units: "in" }, "letter"],
    [{ country: null, units: "cm" }, "a4"],
  ] as const)("of %o prints on %s", (where, name) => {
    const project = { ...smallPlan.project, ...where };
    expect(buildBooklet({ ...smallPlan, project }, smallFigures).paper).toBe(papers[name]);
  });

  test("names a mirrored panel as one that may not be turned over", () => {
    const right = booklet.pages.find(({ title }) => title === "Panel P3: right end");
    expect(right).toMatchObject({
      warnings: [expect.any(String), expect.stringContaining("mirror image of P2")],
    });
  });
});
