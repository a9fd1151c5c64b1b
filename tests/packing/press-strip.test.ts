import { describe, expect, test } from "vitest";
import { makeNoFitTable } from "../../lib/packing/no-fit-table.ts";
import { pressStrip } from "../../lib/packing/press-strip.ts";
import { type StripKind, makeStripJob } from "../../lib/packing/strip-job.ts";
import type { StripPlace } from "../../lib/packing/strip-types.ts";
import type { Polygon } from "../../lib/plane/types.ts";
import { rectangle } from "./lay-cases.ts";
import { worstOverlap } from "./overlap-oracle.ts";

const kind = (outline: Polygon, copies = 1, change: Partial<StripKind> = {}): StripKind => ({
  outline,
  copies,
  turns: [0],
  flips: [false],
  stepX: 0,
  stepY: 0,
  ...change,
});

function press(
  width: number,
  kinds: readonly StripKind[],
  at: readonly (readonly [number, number])[],
) {
  const job = makeStripJob(width, kinds);
  const places = at.map(([x, y], i): StripPlace => ({ form: job.items[i]!.forms[0]!, x, y }));
  const { strip } = pressStrip(job, makeNoFitTable(job.forms), { places, length: 1000 }, 1000);
  const outlines = strip?.places.map(({ form, x, y }): Polygon =>
    job.forms[form]!.polygon.map(([px, py]) => [px + x, py + y]),
  );
  return { strip, overlap: worstOverlap(outlines ?? []) };
}

describe("pressing a lay together", () => {
  test("stacks loose squares without a gap", () => {
    const { strip } = press(
      100,
      [kind(rectangle(80, 80), 3)],
      [
        [5, 4],
        [12, 95],
        [0, 190],
      ],
    );
    expect(strip?.length).toBeCloseTo(240, 6);
  });

  test("parts squares that overlap a little, even if the strip grows", () => {
    const { strip, overlap } = press(
      100,
      [kind(rectangle(80, 80), 2)],
      [
        [0, 0],
        [9, 77],
      ],
    );
    expect(strip?.length).toBeCloseTo(160, 6);
    expect(overlap).toBeLessThan(1e-3);
  });

  // By hand: slopes of 1 in 3 slide together until they touch all along; 100 + 100 + 100 stand above
  // one another on the left, 200 + 100 on the right.
  test("slides slopes on one another", () => {
    const base: Polygon = [
      [0, 0],
      [300, 0],
      [300, 200],
      [0, 100],
    ];
    const lid: Polygon = [
      [0, 0],
      [300, 100],
      [300, 200],
      [0, 200],
    ];
    const { strip, overlap } = press(
      300,
      [kind(base), kind(lid)],
      [
        [0, 10],
        [0, 180],
      ],
    );
    expect(strip?.length).toBeCloseTo(300, 4);
    expect(overlap).toBeLessThan(1e-2);
  });

  test("pushes a wedge into a notch", () => {
    const notched: Polygon = [
      [0, 0],
      [200, 0],
      [200, 100],
      [100, 20],
      [0, 100],
    ];
    const wedge: Polygon = [
      [0, 80],
      [100, 0],
      [200, 80],
    ];
    const { strip, overlap } = press(
      200,
      [kind(notched), kind(wedge)],
      [
        [0, 0],
        [0, 30],
      ],
    );
    expect(strip?.length).toBeCloseTo(100, 4);
    expect(overlap).toBeLessThan(1e-2);
  });

  test("leaves pieces that must start at a repeat where they are", () => {
    const printed = kind(rectangle(80, 80), 1, { stepY: 120 });
    const { strip } = press(
      100,
      [kind(rectangle(80, 80)), printed],
      [
        [0, 20],
        [0, 120],
      ],
    );
    expect(strip?.places[1]).toMatchObject({ y: 120 });
    expect(strip?.length).toBeCloseTo(200, 9);
  });

  test("gives nothing when an overlap cannot be parted", () => {
    const held = kind(rectangle(80, 80), 2, { stepY: 50 });
    expect(
      press(
        100,
        [held],
        [
          [0, 0],
          [0, 50],
        ],
      ).strip,
    ).toBeNull();
  });
});
