import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { drawFigure, listFigures, pageLimits } from "../../lib/drawing/index.ts";
import type { DrawingInput, Figure } from "../../lib/drawing/types.ts";
import { samples } from "../fixtures/drawing/samples.ts";

const drawn = new Map<string, Figure | null>();
/** Each figure is drawn once for all its tests. */
const draw = (name: string, input: DrawingInput, id: string): Figure | null => {
  const key = `${name} ${id}`;
  if (!drawn.has(key)) drawn.set(key, drawFigure(input, id));
  return drawn.get(key) ?? null;
};

const every = Object.entries(samples).flatMap(([name, input]) =>
  listFigures(input).map((id) => ({ name, id, input })),
);
const css = readFileSync("shared/styles/figures.css", "utf8");
const styled = new Set([...css.matchAll(/\.([a-z][\w-]*)/g)].map((match) => match[1]));

describe("drawing the figures of a plan", () => {
  test("finds every kind of figure in the fixtures", () => {
    const kinds = new Set(every.map(({ id }) => id.split("/")[0]));
    expect([...kinds].sort()).toEqual([
      "block",
      "blocks",
      "board",
      "finished",
      "glue",
      "lay",
      "map",
      "opening",
      "panel",
      "pieces",
      "seam",
      "sheet",
      "slab",
      "solid",
      "tipping",
      "ways",
    ]);
  });

  test.each(every)(
    "$name $id has no label on another, on a line or outside",
    ({ name, input, id }) => {
      const figure = draw(name, input, id);
      expect(figure?.collisions).toEqual([]);
      expect(figure?.width).toBeLessThanOrEqual(pageLimits.width);
      expect(figure?.height).toBeLessThanOrEqual(pageLimits.height);
    },
  );

  test.each(every)(
    "$name $id is whole, named and free of what prints as a picture",
    ({ name, input, id }) => {
      const { svg = "", alt = "", title = "", scale = "" } = draw(name, input, id) ?? {};
      // Source: W3C, WCAG 2.2, 1.1.1: a text alternative that serves the same purpose.
      expect(svg).toMatch(
        /^<svg [^>]*role="img" aria-labelledby="([\w-]+)" aria-describedby="([\w-]+)">/,
      );
      expect(alt.length).toBeGreaterThan(20);
      expect(title.length).toBeGreaterThan(2);
      expect(scale.length).toBeGreaterThan(5);
      expect(svg).not.toMatch(
        /<(pattern|mask|filter|image|style|script)|style=|stroke=|fill=|NaN|Infinity|undefined/,
      );
      const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map((match) => match[1] ?? "");
      expect(new Set(ids).size).toBe(ids.length);
      const key = `figure-${id.replace(/[^A-Za-z0-9_-]+/g, "-")}`;
      expect(ids.every((each) => each.startsWith(key))).toBe(true);
      const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
      expect(svg).toContain(`viewBox="0 0 ${width} ${height}"`);
    },
  );

  test.each(every)(
    "$name $id uses only classes that the stylesheet knows",
    ({ name, input, id }) => {
      const svg = draw(name, input, id)?.svg ?? "";
      const used = [...svg.matchAll(/class="([^"]+)"/g)].flatMap((match) =>
        (match[1] ?? "").split(" "),
      );
      expect([...new Set(used)].filter((name) => !styled.has(name))).toEqual([]);
    },
  );

  test("gives the same bytes for the same plan", () => {
    for (const { input, id } of every.slice(0, 12))
      expect(drawFigure(input, id)?.svg).toBe(drawFigure(input, id)?.svg);
  });

  test("has nothing for an id it does not know", () => {
    for (const { input } of every.slice(0, 1))
      expect(drawFigure(input, "solid/nowhere")).toBeNull();
  });

  test("says so when a figure cannot be made small enough", () => {
    const { input, id } = every.find((each) => each.id === "panel/P1") ?? every[0]!;
    expect(drawFigure(input, id, { width: 30, height: 30 })?.collisions.join(" ")).toContain(
      "Wider than 30 mm",
    );
  });
});
