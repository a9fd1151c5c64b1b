import { describe, expect, test } from "vitest";
import { mergeTwin } from "../../lib/booklet/merge-twin.ts";
import { rounded } from "../fixtures/blocks.ts";
import { makeCover } from "../fixtures/make-cover.ts";

// What broke: two panels of one shape shared one full-size pattern with the notches and letters of the
// first alone, so the second was snipped where its partner had no notch.
describe("one pattern for two panels of one shape", () => {
  const all = ["front-left", "front-right", "back-left", "back-right"] as const;
  const { cover } = makeCover([rounded("lid", [600, 400, 60], 100, all)], { panels: "plain" });
  const later = cover.panels.find(({ sameAs }) => sameAs !== null)!;
  const [first, twin] = [later.sameAs!, later.id].map((id) =>
    cover.pieces.find(({ panel }) => panel === id)!,
  ) as [(typeof cover.pieces)[number], (typeof cover.pieces)[number]];
  const merged = mergeTwin(first, twin, false);
  const isAt = (at: readonly [number, number]) =>
    merged.notches.some((one) => Math.hypot(one.at[0] - at[0], one.at[1] - at[1]) < 1);

  test("has the notches of both, and names those of one alone", () => {
    for (const { at } of [...first.notches, ...twin.notches]) expect(isAt(at)).toBe(true);
    const alone = merged.notches.filter(({ on }) => on !== undefined);
    expect(new Set(alone.map(({ on }) => on)).size).toBeLessThanOrEqual(2);
    expect(merged.notches.length).toBeLessThanOrEqual(first.notches.length + twin.notches.length);
  });

  test("has the letters of both", () => {
    const letters = merged.edges.map(({ seam }) => seam ?? "").join(" ");
    for (const { seam } of twin.edges) expect(letters).toContain(seam!);
  });

  test("turned over has its notches mirrored across its middle", () => {
    const turned = mergeTwin(first, { ...first, id: "T" }, true);
    const wide = first.finished.outer.map(({ from }) => from[0]);
    const sum = Math.min(...wide) + Math.max(...wide);
    for (const { at } of first.notches) {
      const mirrored = turned.notches.some(
        (one) => Math.abs(one.at[0] - (sum - at[0])) < 1 && Math.abs(one.at[1] - at[1]) < 1,
      );
      expect(mirrored).toBe(true);
    }
  });
});
