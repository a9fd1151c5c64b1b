import fc from "fast-check";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readLaySet } from "../../lib/packing/bench-lay.ts";
import type { LaySet } from "../../lib/packing/bench-types.ts";
import { coarsenJob } from "../../lib/packing/coarsen-job.ts";
import { fillDents } from "../../lib/packing/fill-dents.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import type { Point, Polygon } from "../../lib/plane/types.ts";
import { sharedArea } from "./overlap-oracle.ts";

const square: Polygon = [
  [0, 0],
  [100, 0],
  [100, 100],
  [0, 100],
];
/** A square with a dent 2 deep in its lower side, and a slot 30 deep in its upper one. */
const dented: Polygon = [
  [0, 0],
  [50, 2],
  [100, 0],
  [100, 100],
  [60, 100],
  [50, 70],
  [40, 100],
  [0, 100],
];

const boundsOf = (polygon: Polygon) => [
  Math.min(...polygon.map(([x]) => x)),
  Math.max(...polygon.map(([x]) => x)),
  Math.min(...polygon.map(([, y]) => y)),
  Math.max(...polygon.map(([, y]) => y)),
];

test("fills what is shallow and leaves what is deep", () => {
  expect(fillDents(dented, 1)).toEqual(dented);
  expect(fillDents(dented, 5)).toHaveLength(7);
  expect(polygonArea(fillDents(dented, 5))).toBeCloseTo(10_000 - 300, 9); // half of 20 by 30
  expect(fillDents(dented, 50)).toEqual(square);
});

/** A star about the middle, never crossing itself: some arms long, some short. */
const star = fc
  .array(fc.double({ min: 20, max: 100, noNaN: true }), { minLength: 5, maxLength: 24 })
  .map((arms) =>
    arms.map((arm, i): Point => {
      const turn = (2 * Math.PI * i) / arms.length;
      return [arm * Math.cos(turn), arm * Math.sin(turn)];
    }),
  );

test("what comes back holds the outline and keeps its bounds", () => {
  fc.assert(
    fc.property(star, fc.double({ min: 0, max: 30, noNaN: true }), (polygon, depth) => {
      const filled = fillDents(polygon, depth);
      const area = polygonArea(polygon);
      expect(sharedArea(polygon, filled)).toBeGreaterThan(area * (1 - 1e-6));
      expect(polygonArea(filled)).toBeGreaterThan(area * (1 - 1e-9));
      boundsOf(filled).forEach((bound, i) => expect(bound).toBeCloseTo(boundsOf(polygon)[i]!, 5));
    }),
    { numRuns: 60 },
  );
});

// ESICUP collection (github.com/ESICUP/datasets, CC0 1.0): swim has curves as short straight legs.
test("only sets of many corners are searched with coarse outlines", () => {
  const read = (name: string) =>
    readLaySet(
      JSON.parse(
        readFileSync(new URL(`../fixtures/irregular/${name}.json`, import.meta.url), "utf8"),
      ) as LaySet,
    );
  const parts = (job: { forms: readonly { parts: readonly unknown[] }[] } | null) =>
    job?.forms.reduce((sum, form) => sum + form.parts.length, 0);
  expect(parts(read("swim"))).toBe(152);
  expect(parts(coarsenJob(read("swim")))).toBeLessThan(100);
  for (const name of ["albano", "trousers", "shapes1"]) expect(coarsenJob(read(name))).toBeNull();
});
