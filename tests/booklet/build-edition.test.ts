import { describe, expect, test } from "vitest";
import { editionOf } from "../../lib/eleventy/edition-of.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import { textStyles } from "../../lib/drawing/measure-text.ts";
import type { Figure } from "../../lib/drawing/types.ts";

const leastSize = Math.min(...Object.values(textStyles).map(({ size }) => size));

/** Points of the smallest letters a drawing may have, from the size it is printed at. */
function leastPoints({ svg }: Figure): number {
  const [, printed] = /width="([\d.]+)mm"/.exec(svg)!;
  const [, drawn] = /viewBox="\S+ \S+ ([\d.]+) /.exec(svg)!;
  return (leastSize * Number(printed) * 72) / (Number(drawn) * 25.4);
}

/** Every drawing of a booklet, wherever it stands. */
function figuresIn(value: unknown): readonly Figure[] {
  if (typeof value !== "object" || value === null) return [];
  if ("svg" in value && "collisions" in value) return [value as Figure];
  return Object.values(value).flatMap(figuresIn);
}

// Two drawings with long names once stood at 15 pt, so that their names would find a place.
// UKAAF and the American Council of the Blind: large print is 18 pt at least, labels too.
describe("every label of the figures in large print is of 18 pt at least", () => {
  test.each(openSite("content").booklets.map((entry) => [entry.slug, entry] as const))(
    "in %s",
    (_, entry) => {
      const figures = figuresIn(editionOf(entry, "large-print").pages);
      expect(figures.length).toBeGreaterThan(5);
      const small = figures
        .filter((figure) => leastPoints(figure) < 17.95)
        .map((figure) => `${figure.id}: ${leastPoints(figure).toFixed(1)} pt`);
      expect(small).toEqual([]);
    },
  );
});
