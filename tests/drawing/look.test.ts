import { readFileSync } from "node:fs";
import { globSync } from "tinyglobby";
import { describe, expect, test } from "vitest";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { panelHatch } from "../../lib/drawing/hatch-styles.ts";
import { drawFigure } from "../../lib/drawing/index.ts";
import { readProjects } from "../../lib/project/read-projects.ts";
import { channels, contrast, luminance } from "../fixtures/contrast.ts";

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
  // Scales, page numbers and cut sizes in soft grey vanished on a bad copier at 8 : 1. WCAG 2.2, success
  // criterion 1.4.6, asks 7 : 1 for words; 10 : 1 is our choice, so that a copy that loses a third keeps it.
  test.each(
    ["--ink", "--ink-soft", "--spine"].flatMap((ink) =>
      ["--paper", "--wash"].map((ground) => [ink, ground] as const),
    ),
  )("words in %s on %s stand out by 10 : 1 or more", (ink, ground) => {
    expect(contrast(tokens[ink]!, tokens[ground]!)).toBeGreaterThanOrEqual(10);
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

// paged.js takes no var() in @page, so that the heads and feet of pages name the colour again.
test("the heads and feet of pages have the soft ink, or the full", () => {
  for (const name of ["print", "handout", "answers", "large-print", "folded"]) {
    const colours = [...read(name).matchAll(/ color: (#\w{6})/g)].map((match) => match[1]);
    for (const colour of colours) {
      expect([tokens["--ink"], tokens["--ink-soft"]], name).toContain(colour);
    }
  }
});

test("no stylesheet but the tokens names a width of line or a size of paper type", () => {
  for (const name of ["figures", "patterns"]) {
    expect(read(name).match(/stroke-width: [\d.]+;/g)).toBeNull();
  }
  expect(read("print").match(/(?<!\w-)font-size: (?!11pt)[\d.]+pt/g)).toBeNull();
});

// A copier without colour: the weights of ITU-R BT.601, here from memory.
const grey = (hex: string): number =>
  channels(hex).reduce((sum, c, i) => sum + c * [0.299, 0.587, 0.114][i]!, 0);

const coloursOf = (property: "fill" | "stroke"): readonly string[] =>
  [...read("figures").matchAll(new RegExp(`${property}: ([^;]+);`, "g"))]
    .map((match) => match[1]!)
    .map((value) => /^var\((--[\w-]+)\)$/.exec(value)?.[1] ?? value)
    .map((value) =>
      value.startsWith("--") ? new RegExp(`${value}: (#\\w+);`).exec(read("tokens"))![1]! : value,
    )
    .filter((value) => value.startsWith("#"));

const files = [
  "content/bay-window-pad.md",
  "content/library-corner-seat.md",
  "content/round-pouf.md",
  "tests/fixtures/projects/seat-block.md",
];
const plans = files.map((file) => {
  const { projects } = readProjects([{ file, text: readFileSync(file, "utf8") }]);
  return { file, plan: computePlan(projects[0]!) };
});

describe("figures copied in black and white", () => {
  // WCAG 2.2, 1.4.11: graphics 3 : 1 against what lies beside them. White strokes only clear lines away.
  test("have no line too pale to copy", () => {
    const lines = coloursOf("stroke").filter((colour) => luminance(colour) < 0.95);
    expect(new Set(lines)).toEqual(new Set(["#000", "#767676"]));
    for (const line of lines) {
      expect(contrast(line, "#ffffff"), line).toBeGreaterThanOrEqual(3);
      for (const tint of tints)
        expect(contrast(line, tint), `${line} on ${tint}`).toBeGreaterThanOrEqual(3);
    }
  });

  test("have fills that all turn into the same near-white, so that none is needed", () => {
    expect(tints).toHaveLength(8);
    const greys = tints.map(grey);
    expect(Math.min(...greys)).toBeGreaterThan(0.9);
    expect(Math.max(...greys) - Math.min(...greys)).toBeLessThan(0.08);
    // WCAG 2.2, 1.4.3: words 4.5 : 1 on what they stand on.
    for (const tint of tints) expect(contrast("#000000", tint)).toBeGreaterThanOrEqual(4.5);
  });

  test("take every colour from their stylesheet", () => {
    const drawings = globSync("tests/golden/*.svg");
    expect(drawings.length).toBeGreaterThan(10);
    for (const file of drawings) {
      expect(readFileSync(file, "utf8"), file).not.toMatch(/ (fill|stroke|style|opacity)=/);
    }
  });

  test("tell sixteen panels and more apart by slope, pitch, crossing or dash of the hatch", () => {
    const hatches = Array.from({ length: 32 }, (_, i) => JSON.stringify(panelHatch(i)));
    expect(new Set(hatches).size).toBe(32);
  });

  const maps = plans.flatMap(({ file, plan }) =>
    plan.covers.map((cover) => ({ file, plan, cover, id: `map/${cover.solid}` })),
  );
  test.each(maps)("$file $id: every panel keeps a hatch of its own and its letter", (map) => {
    const { svg } = drawFigure(map.plan, map.id)!;
    const fills = readFills(svg);
    expect(fills.length).toBeGreaterThanOrEqual(map.cover.panels.length);
    // Of each tint the hatches seen in it; a fill too small for a line is known by its letter.
    const flat = fills.slice(-map.cover.panels.length).map(({ hatch }) => hatch);
    const told = flat.filter((hatch) => hatch !== null);
    expect(new Set(told).size, "two panels laid flat share a hatch").toBe(told.length);
    const written = [...svg.matchAll(/<text class="name[^>]*>([^<]+)/g)].map((match) => match[1]!);
    for (const { id } of map.cover.panels) {
      expect(
        written.some((text) => text.split(/[ ,]/)[0] === id),
        id,
      ).toBe(true);
    }
    // What is tinted is hatched, but for specks no line of the hatch falls on.
    for (const { tint, hatch, across } of fills) {
      if (across > 5.5) expect(hatch, `tint ${tint}, ${across} mm across`).not.toBeNull();
    }
  });
});

interface Fill {
  readonly tint: string;
  /** Slopes and dash of the lines drawn over it; null where there are none. */
  readonly hatch: string | null;
  /** Shorter side of the box round it, in mm. */
  readonly across: number;
}

/** Every tinted region of a figure with the hatch that follows it. */
function readFills(svg: string): readonly Fill[] {
  const marks = [...svg.matchAll(/<path class="([^"]+)" d="([^"]+)"\/>/g)];
  return marks.flatMap(([, name, data], i): readonly Fill[] => {
    if (!name!.startsWith("tint ")) return [];
    const next = marks[i + 1];
    const hatch = next?.[1]!.startsWith("hatch ") ? describeHatch(next[1]!, next[2]!) : null;
    return [{ tint: name!, hatch, across: shorterSide(data!) }];
  });
}

function shorterSide(data: string): number {
  const numbers = [...data.matchAll(/[ML]([-\d.]+)[ ,]([-\d.]+)/g)];
  const span = (at: 1 | 2): number => {
    const values = numbers.map((match) => Number(match[at]));
    return Math.max(...values) - Math.min(...values);
  };
  return Math.min(span(1), span(2));
}

/** Slopes to five degrees, and dash. */
function describeHatch(name: string, data: string): string {
  const lines = [...data.matchAll(/M([-\d.]+)[ ,]([-\d.]+)L([-\d.]+)[ ,]([-\d.]+)/g)].map((match) =>
    match.slice(1).map(Number),
  );
  const slopes = new Set<number>();
  for (const [x1, y1, x2, y2] of lines as [number, number, number, number][]) {
    if (Math.hypot(x2 - x1, y2 - y1) < 2) continue;
    const degrees = (Math.atan2(y1 - y2, x2 - x1) * 180) / Math.PI;
    slopes.add((Math.round(degrees / 5) * 5 + 360) % 180);
  }
  return `${name} ${[...slopes].toSorted((a, b) => a - b).join("/")}`;
}
