import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { panelHatch } from "../../lib/drawing/hatch-styles.ts";
import { drawFigure } from "../../lib/drawing/index.ts";
import { readProjects } from "../../lib/project/read-projects.ts";
import { contrast, luminance } from "../fixtures/contrast.ts";

const read = (name: string): string => readFileSync(`shared/styles/${name}.css`, "utf8");
const tokens = Object.fromEntries(
  [...read("tokens").matchAll(/(--[\w-]+): ([^;]+);/g)].map((match) => [match[1]!, match[2]!]),
);
const tints = [...read("figures").matchAll(/\.tint-(\d) \{\s*fill: (#\w{6})/g)].map(
  (match) => match[2]!,
);

// Worked values of WCAG 2.2: black on white is 21 : 1; #767676 is the lightest grey that passes on white.
test.each([
  ["#000000", "#ffffff", 21],
  ["#767676", "#ffffff", 4.54],
] as const)("the measure itself: %s on %s is %f : 1", (a, b, ratio) => {
  expect(contrast(a, b)).toBeCloseTo(ratio, 2);
});

describe("contrast", () => {
  // WCAG 2.2, success criterion 1.4.3: 4.5 : 1 for words.
  test.each(
    ["--ink", "--ink-soft", "--spine"].flatMap((ink) =>
      ["--paper", "--wash"].map((ground) => [ink, ground] as const),
    ),
  )("words in %s on %s stand out by 4.5 : 1 or more", (ink, ground) => {
    expect(contrast(tokens[ink]!, tokens[ground]!)).toBeGreaterThanOrEqual(4.5);
  });

  // WCAG 2.2, success criterion 1.4.11: 3 : 1 for what a picture needs.
  test("what a step leaves pale can still be seen: 3 : 1 or more", () => {
    expect(contrast(tokens["--ghost"]!, tokens["--paper"]!)).toBeGreaterThanOrEqual(3);
  });

  test("black words and hatches stand out on every tint", () => {
    expect(tints).toHaveLength(8);
    for (const tint of tints) expect(contrast("#000000", tint)).toBeGreaterThanOrEqual(7);
  });
});

// ISO 128-2 (from memory): widths of lines rise by the root of two, from 0.13 to 2 mm.
test("every width of line is a step of ISO 128-2", () => {
  const steps = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];
  const widths = Object.entries(tokens).filter(([name]) => name.startsWith("--line-"));
  expect(widths.length).toBeGreaterThan(5);
  for (const [, width] of widths) expect(steps).toContain(Number(width));
  expect(Number(tokens["--line-wide"]) / Number(tokens["--line-narrow"])).toBeCloseTo(2, 9);
});

test("no stylesheet but the tokens names a width of line or a size of paper type", () => {
  for (const name of ["figures", "patterns"]) {
    expect(read(name).match(/stroke-width: [\d.]+;/g)).toBeNull();
  }
  expect(read("print").match(/(?<!\w-)font-size: (?!11pt)[\d.]+pt/g)).toBeNull();
});

describe("on a copier that knows no colour", () => {
  const grey = (colour: string): number => Math.round(255 * luminance(colour) ** (1 / 2.4));

  // What makes the test worth having: the tints alone would all come out as paper.
  test("the tints of panels come out too alike to tell apart", () => {
    const greys = tints.map(grey).sort((a, b) => a - b);
    const steps = greys.slice(1).map((each, i) => each - greys[i]!);
    expect(Math.min(...steps)).toBeLessThan(10);
  });

  test("sixteen panels and more have hatches that differ in slope, pitch, crossing or dash", () => {
    const seen = Array.from({ length: 32 }, (_, i) => JSON.stringify(panelHatch(i)));
    expect(new Set(seen).size).toBe(32);
  });

  test.each(["bay-pad", "round-pouf", "seat-block"])(
    "each panel of %s is told apart by hatch and by name on its map, without any colour",
    (name) => {
      const file = `tests/fixtures/projects/${name}.md`;
      const { projects } = readProjects([{ file, text: readFileSync(file, "utf8") }]);
      const plan = computePlan(projects[0]!);
      for (const { solid, panels } of plan.covers) {
        const { svg } = drawFigure(plan, `map/${solid}`)!;
        const words = [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map((match) => match[1]!);
        for (const { id } of panels) {
          expect(words.some((text) => text.split(/\W/).includes(id))).toBe(true);
        }
        const hatches = svg.match(/class="hatch[^"]*"/g) ?? [];
        expect(hatches.length).toBeGreaterThanOrEqual(panels.length);
        // Solid colours that carry words are tints; nothing else is filled but black and white.
        const fills = [...svg.matchAll(/fill="([^"]+)"/g)].map((match) => match[1]!);
        expect(fills.filter((fill) => fill !== "none")).toEqual([]);
      }
    },
  );
});
