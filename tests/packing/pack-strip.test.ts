import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { benchLaySet, readLaySet } from "../../lib/packing/bench-lay.ts";
import type { LaySet } from "../../lib/packing/bench-types.ts";
import { layBound } from "../../lib/packing/lay-bound.ts";
import { makeNoFitTable } from "../../lib/packing/no-fit-table.ts";
import { packStrip, searchPlan, startStrip } from "../../lib/packing/pack-strip.ts";
import { makeStripJob } from "../../lib/packing/strip-job.ts";
import type { Strip, StripJob } from "../../lib/packing/strip-types.ts";
import type { Point, Polygon } from "../../lib/plane/types.ts";
import { rectangle } from "./lay-cases.ts";
import { worstOverlap } from "./overlap-oracle.ts";

// Sets of the ESICUP collection (github.com/ESICUP/datasets, CC0 1.0); see the folder's README.
const names = [
  "albano",
  "blaz",
  "dighe1",
  "fu",
  "jakobs1",
  "mao",
  "shapes0",
  "shapes1",
  "swim",
  "trousers",
];

const readSet = (name: string): LaySet =>
  JSON.parse(
    readFileSync(new URL(`../fixtures/irregular/${name}.json`, import.meta.url), "utf8"),
  ) as LaySet;

const outlinesOf = (job: StripJob, { places }: Strip): readonly Polygon[] =>
  places.map(({ form, x, y }) =>
    job.forms[form]!.polygon.map(([px, py]): Point => [px + x, py + y]),
  );

/** A search much shorter than any in use: it stops in the middle of things. */
const short = {
  ...searchPlan("full"),
  heats: [
    { trials: 2, until: 1e6 },
    { trials: 1, until: 2e6 },
  ],
};

describe("laying the open sets", () => {
  test.each(names)(
    "%s: no overlap by another library, nothing off the strip, not longer than at first",
    (name) => {
      const job = readLaySet(readSet(name));
      const strip = packStrip(job, "quick", short);
      const outlines = outlinesOf(job, strip);
      const area = Math.max(...job.items.map((item) => item.area));
      expect(worstOverlap(outlines) / area).toBeLessThan(1e-6);
      const slack = 1e-6 * job.width;
      for (const [x, y] of outlines.flat()) {
        expect(x).toBeGreaterThan(-slack);
        expect(x).toBeLessThan(job.width + slack);
        expect(y).toBeGreaterThan(-slack);
        expect(y).toBeLessThan(strip.length + slack);
      }
      const start = startStrip(job, makeNoFitTable(job.forms));
      expect(strip.length).toBeLessThanOrEqual(start.length);
      expect(strip.length).toBeGreaterThanOrEqual(layBound(job) - slack);
    },
  );

  test("gives the same lay twice", () => {
    const job = readLaySet(readSet("blaz"));
    expect(packStrip(job, "quick", short)).toEqual(packStrip(job, "quick", short));
  });

  // dighe1 is a square of 100 × 100 cut up: a jigsaw with a proven optimum. A third is easily wasted on
  // it (bottom-left fill reaches 69 %).
  test("comes near the picture of a jigsaw", () => {
    const { density, fault } = benchLaySet(readSet("dighe1"), "quick");
    expect(density).toBeGreaterThan(85);
    expect(fault).toBeLessThan(1e-9);
  });
});

describe("pieces that fit the strip only when turned", () => {
  test("are never laid the way that hangs off", () => {
    const long = {
      outline: rectangle(90, 400),
      copies: 5,
      turns: [0, 90],
      flips: [false],
      stepX: 0,
      stepY: 0,
    };
    const job = makeStripJob(300, [long, { ...long, outline: rectangle(70, 120) }]);
    const strip = packStrip(job, "quick", short);
    for (const [x] of outlinesOf(job, strip).flat()) expect(x).toBeLessThanOrEqual(300 + 1e-6);
    expect(strip.length).toBeLessThanOrEqual(800 + 1e-6); // three side by side, then two and the rest
  });
});
