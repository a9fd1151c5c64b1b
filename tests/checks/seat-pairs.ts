// Pairs of projects for the checks of seats, foam and balance: one that trips the check, one that just does not.
import type { Work } from "../../lib/estimate/types.ts";
import type { Mm } from "../../lib/plane/types.ts";
import type { Audience } from "../../lib/project/types.ts";
import type { Face, SolidBlock } from "../../lib/solids/types.ts";
import * as make from "../fixtures/plans/make.ts";

export interface Pair {
  readonly finding: string;
  /** Trips the check. */
  readonly trips: Work;
  /** As near as can be without tripping it. */
  readonly nearMiss: Work;
}

type Box = readonly [x: Mm, y: Mm, z: Mm, width: Mm, depth: Mm, height: Mm];

const topOf = (id: string, [x, y, z, width, depth, height]: Box): Face =>
  make.makeFace({
    id: `${id}/top`,
    label: `${id} top`,
    area: width * depth,
    shape: make.rectangle(width, depth),
    surface: { kind: "plane", origin: [x, y, z + height], across: [1, 0, 0], rise: [0, 1, 0] },
  });

/** Blocks as boxes, each with its top face; every one of the foam its name begins with. */
export function seatOf(
  blocks: Readonly<Record<string, Box>>,
  more: {
    readonly audience?: Audience | null;
    readonly mass?: number;
    readonly hardness?: number | null;
    readonly soft?: number;
    readonly noFaces?: readonly string[];
    readonly joints?: Parameters<typeof make.makeSolid>[0]["joints"];
    readonly seatNames?: readonly string[];
  } = {},
): Work {
  const entries = Object.entries(blocks);
  const made = entries.map(([id, [x, y, z, ...size]]): SolidBlock =>
    make.makeBlock({ id, min: [x, y, z], size, foam: id.startsWith("soft") ? "soft" : "foam" }),
  );
  const most = (axis: 0 | 1 | 2) =>
    Math.max(...made.map(({ min, size }) => min[axis] + size[axis]));
  const least = (axis: 0 | 1 | 2) => Math.min(...made.map(({ min }) => min[axis]));
  const volume = made.reduce((sum, block) => sum + block.volume, 0);
  const centre = (axis: 0 | 1 | 2) =>
    made.reduce(
      (sum, block) => sum + (block.min[axis] + block.size[axis] / 2) * (block.volume / volume),
      0,
    );
  const hardness = more.hardness === undefined ? 150 : more.hardness;
  return make.makeWork({
    project: {
      audience: more.audience === undefined ? { kind: "adult" } : more.audience,
      stock: [
        make.makeSlab({ hardness }),
        make.makeSlab({ id: "soft", label: "soft foam", hardness: more.soft ?? 100 }),
      ],
    },
    solids: [
      make.makeSolid({
        id: "seat",
        blocks: made,
        min: [least(0), least(1), least(2)],
        size: [most(0) - least(0), most(1) - least(1), most(2) - least(2)],
        centreOfMass: [centre(0), centre(1), centre(2)],
        mass: more.mass ?? 4,
        joints: more.joints ?? [],
        faces: entries
          .filter(([id]) => !(more.noFaces ?? []).includes(id))
          .map(([id, box], index) => ({
            ...topOf(id, box),
            ...(index === 0 && more.seatNames !== undefined ? { names: more.seatNames } : {}),
          })),
      }),
    ],
  });
}

const child = (years: number): Audience => ({ kind: "age", years });
const block = (height: Mm, depth: Mm = 400, width: Mm = 500): Box => [
  0,
  0,
  0,
  width,
  depth,
  height,
];
const armed = (between: Mm, armHeight: Mm, audience: Audience = { kind: "adult" }) =>
  seatOf(
    {
      seat: [100, 0, 0, between, 400, 440],
      left: [0, 0, 0, 100, 400, 440 + armHeight],
      right: [100 + between, 0, 0, 100, 400, 440 + armHeight],
    },
    { hardness: null, audience },
  );
const jutting = (arm: Mm) =>
  seatOf(
    {
      seat: [0, 0, 0, 400, 400, 300],
      arm: [400 - (100 - arm), 0, 300, 100, 400, 150],
    },
    { mass: 0, audience: child(6), hardness: null },
  );
const leaning = (baseDepth: Mm) =>
  seatOf(
    {
      seat: [0, 0, 200, 400, 400, 100],
      back: [0, 400, 300, 400, 100, 400],
      base: [0, 0, 0, 400, baseDepth, 200],
    },
    { mass: 4, hardness: null, noFaces: ["base"] },
  );
const stool = (width: Mm) => seatOf({ seat: block(460, width, width) }, { hardness: null });
const joint = (z: Mm) => ({
  ...make.makeJoint(["seat", "wing"], 60_000),
  outlines: [
    [[200, 0, 0] as const, [200, 300, 0] as const, [200, 300, z] as const, [200, 0, z] as const],
  ],
});
const glued = (z: Mm) =>
  seatOf(
    { seat: [0, 0, 0, 200, 300, 300], wing: [200, 0, 0, 200, 300, 300] },
    { joints: [joint(z)], seatNames: ["seat/top", "wing/top"], audience: null },
  );
const stacked = (soft: number) =>
  seatOf(
    { seat: [0, 0, 100, 400, 400, 100], soft: [0, 0, 0, 400, 400, 100] },
    { soft, noFaces: ["soft"], audience: null },
  );
const slabNamed = (given: Parameters<typeof make.makeSlab>[0]) =>
  make.makeWork({
    project: { stock: [make.makeSlab(given)] },
    slabs: [make.makeCutPlan({ stock: "foam", kind: "slab" })],
  });

export const seatPairs: readonly Pair[] = [
  {
    // EN 1729-1 has ages for children only: an adult outgrows nothing.
    finding: "fits-ages",
    trips: seatOf({ seat: block(310) }, { audience: child(5), hardness: null }),
    nearMiss: seatOf({ seat: block(310) }, { hardness: null }),
  },
  {
    // Hard foam keeps the seat at 520 mm; soft foam lets it down to where an adult's feet reach.
    finding: "seat-high",
    trips: seatOf({ seat: block(520) }, { hardness: 2000 }),
    nearMiss: seatOf({ seat: block(520) }, { hardness: 120 }),
  },
  {
    finding: "seat-deep",
    trips: seatOf(
      { seat: block(260, 300), back: [0, 300, 0, 500, 100, 600] },
      { audience: child(4), hardness: null },
    ),
    nearMiss: seatOf(
      { seat: block(260, 270), back: [0, 270, 0, 500, 100, 600] },
      { audience: child(4), hardness: null },
    ),
  },
  {
    finding: "seat-narrow",
    trips: seatOf({ seat: block(440, 400, 395) }, { hardness: null }),
    nearMiss: seatOf({ seat: block(440, 400, 400) }, { hardness: null }),
  },
  // ANSUR II 2012: hips of the 95th woman, 456 mm, and a tenth more.
  { finding: "seat-narrow", trips: armed(495, 220), nearMiss: armed(502, 220) },
  { finding: "arm-height", trips: armed(520, 310), nearMiss: armed(520, 240) },
  { finding: "arm-height", trips: armed(520, 165), nearMiss: armed(520, 185) },
  {
    // The same arms, measured from the seat where it has sunk to.
    finding: "arm-height",
    trips: seatOf(
      {
        seat: [100, 0, 0, 520, 400, 440],
        left: [0, 0, 0, 100, 400, 680],
        right: [620, 0, 0, 100, 400, 680],
      },
      { hardness: 110 },
    ),
    nearMiss: armed(520, 240),
  },
  {
    finding: "bottoms-out",
    trips: seatOf({ seat: block(100) }, { hardness: 100 }),
    nearMiss: seatOf({ seat: block(100) }, { hardness: 130 }),
  },
  {
    finding: "foam-soft",
    trips: seatOf({ seat: block(440) }, { hardness: 110 }),
    nearMiss: seatOf({ seat: block(440) }, { hardness: 112 }),
  },
  {
    finding: "foam-hard",
    trips: seatOf({ seat: block(440) }, { hardness: 250 }),
    nearMiss: seatOf({ seat: block(440) }, { hardness: 245 }),
  },
  {
    finding: "foam-hard",
    trips: seatOf({ seat: block(440), "soft-back": [0, 400, 440, 500, 100, 300] }, { soft: 140 }),
    nearMiss: seatOf(
      { seat: block(440), "soft-back": [0, 400, 440, 500, 100, 300] },
      { soft: 130 },
    ),
  },
  {
    finding: "hardness-unknown",
    trips: seatOf({ seat: block(440) }, { hardness: null }),
    nearMiss: seatOf({ seat: block(440) }, { hardness: null, audience: null }),
  },
  { finding: "lamination-order", trips: stacked(125), nearMiss: stacked(130) },
  { finding: "glue-line", trips: glued(300), nearMiss: glued(270) },
  {
    finding: "reclaimed-foam",
    trips: slabNamed({ isReclaimed: true }),
    nearMiss: slabNamed({ isReclaimed: false }),
  },
  {
    finding: "reclaimed-foam",
    trips: slabNamed({ label: "foam of the old sofa" }),
    nearMiss: slabNamed({ label: "gold foam" }),
  },
  { finding: "tips-on-arm", trips: jutting(70), nearMiss: jutting(30) },
  { finding: "tips-back", trips: leaning(250), nearMiss: leaning(420) },
  { finding: "tips-with-sitter", trips: stool(230), nearMiss: stool(260) },
  {
    // A weightless L whose inner corner is empty: the hull's slanting edge is what it tips over.
    finding: "falls-over",
    trips: seatOf(
      { seat: [0, 0, 100, 400, 400, 50], foot: [300, 300, 0, 100, 100, 100] },
      { noFaces: ["foot"] },
    ),
    nearMiss: seatOf(
      { seat: [0, 0, 100, 400, 400, 50], foot: [50, 50, 0, 300, 300, 100] },
      { noFaces: ["foot"] },
    ),
  },
];
