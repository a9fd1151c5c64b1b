import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { computePlan } from "../../lib/booklet/compute-plan.ts";
import { papers } from "../../lib/booklet/paper.ts";
import type { PaperName } from "../../lib/booklet/paper.ts";
import { patternSheets } from "../../lib/booklet/pattern-sheets.ts";
import type { PatternOptions, PatternSheet } from "../../lib/booklet/pattern-sheets.ts";
import { boxOfWords, isWithin } from "../../lib/booklet/place-on-sheet.ts";
import type { SheetWords } from "../../lib/booklet/place-on-sheet.ts";
import { liveArea, tileOverlap } from "../../lib/booklet/tile-piece.ts";
import { boxesOverlap } from "../../lib/drawing/boxes.ts";
import type { Box } from "../../lib/drawing/types.ts";
import { readProjects } from "../../lib/project/read-projects.ts";

const texts = readdirSync("content")
  .filter((name) => name.endsWith(".md"))
  .map((name) => ({ file: name, text: readFileSync(`content/${name}`, "utf8") }));
const plans = readProjects(texts).projects.map((project) => computePlan(project));

const ways: readonly [string, PatternOptions][] = [
  ["as they are", { halves: false, isMirrored: false }],
  ["in halves", { halves: true, isMirrored: false }],
  ["mirrored", { halves: false, isMirrored: true }],
];
const sizes: readonly PaperName[] = ["a4", "letter", "a3", "tabloid"];
const cases = plans.flatMap((plan) =>
  ways.flatMap(([way, options]) =>
    sizes.map((paper) => ({ slug: plan.project.slug, way, paper, plan, options })),
  ),
);

const plain = (text: string): string =>
  text.replaceAll("&lt;", "<").replaceAll("&quot;", '"').replaceAll("&amp;", "&");

/** What is written on the piece itself, not in the margins of the sheet. */
function wordsOn({ svg }: PatternSheet): readonly SheetWords[] {
  const groups = [...svg.matchAll(/<g class="words">(.*?)<\/g>/gs)].map(([, inner]) => inner!);
  const form =
    /<text x="(\S+)" y="(\S+)" font-size="(\S+)" class="(start|middle)"( transform="[^"]+")?>([^<]*)</g;
  return [...groups.join("").matchAll(form)].map(([, x, y, size, anchor, turn, words]) => ({
    at: [Number(x), Number(y)],
    words: plain(words!),
    size: Number(size),
    anchor: anchor as "start" | "middle",
    isUpright: turn !== undefined,
  }));
}

/** What stays in sight: a sheet with one beside it or below it loses the strip that they share. */
function sightOf({ title }: PatternSheet, paper: PaperName): Box {
  const { left, top, width, height } = liveArea(papers[paper]);
  const [, row, rows, column, columns] = /row (\d+) of (\d+), column (\d+) of (\d+)$/.exec(
    title,
  ) ?? ["", "1", "1", "1", "1"];
  return {
    left,
    top,
    right: left + width - (Number(column) < Number(columns) ? tileOverlap : 0),
    bottom: top + height - (Number(row) < Number(rows) ? tileOverlap : 0),
  };
}

// Names and seam letters once stood where the piece had them, and were cut by the edge of a sheet.
describe.each(cases)("the sheets of $slug $way on $paper", ({ plan, options, paper }) => {
  const { sheets } = patternSheets(plan, paper, options);
  const own = sheets.filter(({ id }) => id.startsWith("tile-"));

  test("have no word across an edge, and none on another", () => {
    for (const sheet of own) {
      const sight = sightOf(sheet, paper);
      const boxes = wordsOn(sheet).map((word) => ({ word, box: boxOfWords(word) }));
      const cut = boxes.filter(({ box }) => !isWithin(box, sight)).map(({ word }) => word.words);
      expect(cut, sheet.title).toEqual([]);
      const met = boxes.flatMap(({ box, word }, i) =>
        boxes.slice(i + 1).some((other) => boxesOverlap(box, other.box)) ? [word.words] : [],
      );
      expect(met, sheet.title).toEqual([]);
    }
  });

  test("each say which piece they belong to", () => {
    for (const sheet of own) {
      const words = wordsOn(sheet).map((word) => word.words);
      for (const title of sheet.title.split("; ")) {
        const short = title.split(/[:,]/)[0]!;
        expect(
          words.some((each) => each.startsWith(short)),
          sheet.title,
        ).toBe(true);
      }
    }
  });

  test("have the letter of every seam, the arrow of every piece, and the names of all crosses", () => {
    const words = own.flatMap((sheet) => wordsOn(sheet).map((word) => word.words)).join("; ");
    const pieces = [...plan.covers.flatMap((cover) => cover.pieces), ...plan.pieces];
    const drawn = pieces.filter(({ id, label }) =>
      own.some(({ title }) => title.includes(`Panel ${id}:`) || title.startsWith(label)),
    );
    for (const { edges, marks, id } of options.halves ? [] : drawn) {
      for (const { seam } of edges)
        if (seam !== null)
          expect(words, `${id} ${seam}`).toMatch(new RegExp(`(^|; )${seam}(;|,|$)`));
      for (const { label } of marks) expect(words).toContain(label);
    }
    const arrows = own.flatMap(({ svg }) => [...svg.matchAll(/class="line arrow"/g)]);
    expect(arrows.length).toBeGreaterThanOrEqual(Math.min(own.length, drawn.length));
  });
});
