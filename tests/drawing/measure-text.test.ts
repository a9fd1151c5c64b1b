import { readFileSync } from "node:fs";
import { openSync } from "fontkit";
import { describe, expect, test } from "vitest";
import { LINE_SPACING, measureText, textStyles } from "../../lib/drawing/measure-text.ts";
import { textRuns } from "../../lib/drawing/text-runs.ts";

// Source: the font files themselves, read by fontkit, an independent reader.
const folder = "node_modules/@fontsource/source-sans-3/files/source-sans-3-latin-";
const font = (weight: number) => openSync(`${folder}${weight}-normal.woff`);
const fonts = { regular: font(400), semibold: font(600) };

const widthByFont = (text: string, weight: "regular" | "semibold"): number =>
  textRuns(text).reduce((sum, run) => {
    const shaped = run.isFraction ? fonts[weight].layout(run.text, ["frac"]) : null;
    const loose = [...run.text].reduce(
      (total, letter) =>
        total + fonts[weight].glyphForCodePoint(letter.codePointAt(0) ?? 0).advanceWidth,
      0,
    );
    return sum + (shaped ? shaped.advanceWidth : loose);
  }, 0) / 1000;

const samples = [
  "this edge to the top",
  "P1 back and top",
  "120.5 × 45 cm",
  "24 1/2 in",
  "17/32",
  "Äü",
  "45°",
];

describe("measuring text", () => {
  test.each(samples.filter((text) => text !== "Äü"))("agrees with the font on %s", (text) => {
    expect(measureText(text, "label")).toBeCloseTo(4 * widthByFont(text, "regular"), 1);
    expect(measureText(text, "name")).toBeCloseTo(4 * widthByFont(text, "semibold"), 1);
  });

  test("never takes a letter it does not know for narrower than it is", () => {
    expect(measureText("Äü", "label")).toBeGreaterThanOrEqual(4 * widthByFont("Äü", "regular"));
  });

  test("keeps capitals at 2.6 mm, as ISO 3098-1 asks 2.5 of the smallest lettering", () => {
    for (const { size, weight } of Object.values(textStyles)) {
      const cap = (fonts[weight].capHeight / fonts[weight].unitsPerEm) * size;
      expect(cap).toBeGreaterThanOrEqual(2.6);
      // The descender of g must fit before the next line's capitals.
      expect(LINE_SPACING).toBeGreaterThan(fonts[weight].capHeight / 1000 + 0.25);
    }
  });

  test("has the sizes of the stylesheet", () => {
    const css = readFileSync("shared/styles/figures.css", "utf8");
    for (const [style, { size, weight }] of Object.entries(textStyles)) {
      const rule = new RegExp(
        `\\.figure \\.${style},[^}]*font-size: ([\\d.]+)px;\\s*font-weight: (\\d+)`,
      ).exec(css);
      expect([style, Number(rule?.[1]), Number(rule?.[2])]).toEqual([
        style,
        size,
        weight === "regular" ? 400 : 600,
      ]);
    }
  });
});

describe("cutting text into runs", () => {
  test.each([
    ["24 1/2 in", ["24", "1⁄2", " in"]],
    ["1/8", ["1⁄8"]],
    ["plain", ["plain"]],
    ["5 3/4 × 2 1/4", ["5", "3⁄4", " × 2", "1⁄4"]],
  ])("sets %s as %j", (text, runs) => {
    expect(textRuns(text).map((run) => run.text)).toEqual(runs);
  });
});
