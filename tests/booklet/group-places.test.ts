import { expect, test } from "vitest";
import { groupPlaces } from "../../lib/booklet/group-places.ts";
import { layCloth } from "../../lib/packing/lay-cloth.ts";
import type { Lay, LayPlace } from "../../lib/packing/types.ts";
import { cloth, piece, rectangle } from "../packing/lay-cases.ts";

const place = (name: string, x: number, y: number, change: Partial<LayPlace> = {}): LayPlace => ({
  piece: name,
  copy: 1,
  x,
  y,
  turn: 0,
  flipped: false,
  outline: [],
  ...change,
});

const layOf = (places: readonly LayPlace[]): Lay => ({
  ...layCloth([piece("flap", rectangle(100, 100))], cloth(300)),
  places,
});

test("like pieces at even steps share a row; other columns, turns and steps do not", () => {
  const even = [0, 200, 400, 600].map((y) => place("flap", 10, y));
  const turned = place("flap", 10, 800, { turn: 180 });
  const others = [place("flap", 12, 0), place("tab", 10, 100), place("flap", 10, 900)];
  const runs = groupPlaces(layOf([...even, turned, ...others]));
  expect(runs.map((run) => [run[0].piece, run[0].x, run[0].y, run.length])).toEqual([
    ["flap", 10, 0, 4],
    ["flap", 12, 0, 1],
    ["tab", 10, 100, 1],
    ["flap", 10, 800, 1],
    ["flap", 10, 900, 1],
  ]);
});

// A class set of thirty printed 150 rows, which no page held.
test("every place of a class set is told once, in far fewer rows", () => {
  const lay = layCloth(
    [piece("front", rectangle(620, 300)), piece("strap", rectangle(60, 410), 2)],
    cloth(1000),
    { copies: 30 },
  );
  const runs = groupPlaces(lay);
  expect(runs.flat()).toHaveLength(90);
  expect(new Set(runs.flat())).toEqual(new Set(lay.places));
  expect(runs.length).toBeLessThan(45);
});
