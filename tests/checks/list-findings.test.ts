import { describe, expect, test } from "vitest";
import { checks, listFindings } from "../../lib/checks/list-findings.ts";
import type { Work } from "../../lib/estimate/types.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import type { Point3 } from "../../lib/solids/types.ts";
import { box } from "../fixtures/blocks.ts";
import * as make from "../fixtures/plans/make.ts";
import { listRules } from "../../lib/checks/rules.ts";
import { seatFor } from "../../lib/checks/seat-for.ts";
import fire from "../../shared/safety/fire.json" with { type: "json" };
import { benchPad } from "../fixtures/plans/bench-pad.ts";
import { cornerSeat } from "../fixtures/plans/corner-seat.ts";
import { toyCrate } from "../fixtures/plans/toy-crate.ts";
import { seatPairs, type Pair } from "./seat-pairs.ts";
import { workPairs } from "./work-pairs.ts";

const seatFace = (size: readonly [number, number], z: number, y = 0) =>
  make.makeFace({
    id: "block/top",
    label: "top",
    area: size[0] * size[1],
    shape: make.rectangle(size[0], size[1]),
    surface: { kind: "plane", origin: [0, y, z], across: [1, 0, 0], rise: [0, 1, 0] },
  });
const seat = (height: number, more = {}) =>
  make.makeSolid({
    id: "seat",
    size: [400, 400, height],
    faces: [seatFace([400, 400], height)],
    ...more,
  });
const lay = (more: Parameters<typeof make.makeLay>[0]) =>
  make.makeWork({ project: { stock: [make.makeFabric()] }, lays: [make.makeLay(more)] });
const slabPlan = (more: object) =>
  make.makeWork({
    project: { stock: [make.makeSlab()] },
    slabs: [make.makeCutPlan({ stock: "foam", kind: "slab", ...more })],
  });
const covered = (
  cover: Partial<Parameters<typeof make.makeCover>[0]>,
  more: Parameters<typeof make.makeWork>[0] = {},
) =>
  make.makeWork({
    ...more,
    project: { stock: [make.makeFabric()], ...more.project },
    covers: [make.makeCover({ solid: "seat", ...cover })],
  });
const aged = (years: number, more: object = {}) => ({
  audience: { kind: "age" as const, years },
  ...more,
});

// Two blocks 10 mm apart, two that meet along an edge, and two that share a face.
const pair = (min: readonly [number, number, number], parts: readonly (readonly string[])[]) =>
  make.makeWork({
    solids: [
      make.makeSolid({
        id: "seat",
        parts,
        size: [200, 100, 200],
        blocks: [
          make.makeBlock({ id: "low", foam: null }),
          make.makeBlock({ id: "high", min, foam: null }),
        ],
      }),
    ],
  });
const apart = [["low"], ["high"]];
const buried = (share: number) =>
  make.makeWork({
    solids: [
      make.makeSolid({
        id: "seat",
        blocks: [make.makeBlock({ id: "low" }), make.makeBlock({ id: "high", buried: share })],
      }),
    ],
  });

/** A pad for a child under a net with holes that wide. */
const netted = (mesh: number) => {
  const fabric = make.makeFabric({ mesh });
  const cover = make.makeCoverSpec({ fabric: fabric.id });
  const solids = [make.makeSolidSpec({ id: "pad", cover })];
  return make.makeWork({
    project: make.makeProject({ stock: [fabric], solids, audience: { kind: "age", years: 6 } }),
  });
};

const inward = (anchor: "pad" | null, normal: readonly [number, number, number]) =>
  covered(
    {},
    {
      project: {
        stock: [make.makeFabric()],
        solids: [make.makeSolidSpec({ id: "seat", cover: make.makeCoverSpec({ anchor }) })],
      },
      solids: [
        make.makeSolid({
          id: "seat",
          faces: [
            make.makeFace({ id: "a/top", normal }),
            make.makeFace({ id: "b/front", normal: [0, -1, 0] }),
          ],
          edges: [make.makeEdge({ faces: ["a/top", "b/front"], bend: "inward" })],
        }),
      ],
    },
  );

const turned = (degrees: number, direction: "one-way" | "two-way" | "any", placed = 0) => {
  const panel = make.makePanel({
    id: "P1",
    faces: [
      {
        face: "block/front",
        turn: (degrees * Math.PI) / 180,
        placement: { turn: 0, isFlipped: false, shift: [0, 0] },
      },
    ],
  });
  return covered(
    { panels: [panel], pieces: [make.makePiece({ id: "P1", panel: "P1" })] },
    {
      project: { stock: [make.makeFabric({ direction })] },
      solids: [
        make.makeSolid({
          id: "seat",
          faces: [make.makeFace({ id: "block/front", normal: [0, -1, 0] })],
        }),
      ],
      lays: [
        make.makeLay({
          stock: "cloth",
          places: [{ piece: "P1", copy: 1, x: 0, y: 0, turn: placed, flipped: false, outline: [] }],
        }),
      ],
    },
  );
};
const mirrored = (isTwoFaced: boolean) =>
  covered(
    { panels: [make.makePanel({ id: "P1" }), make.makePanel({ id: "P2", mirrorOf: "P1" })] },
    { project: { stock: [make.makeFabric({ isTwoFaced })] } },
  );
const easing = (second: number) =>
  covered({ seams: [make.makeSeam({ id: "A", panels: ["P1", "P2"], length: [500, second] })] });
const dense = (density: number | null) =>
  make.makeWork({
    project: { stock: [make.makeSlab({ density })] },
    solids: [seat(300, { blocks: [make.makeBlock({ id: "block", size: [400, 400, 300] })] })],
  });
const backed = (depth: number) =>
  make.makeWork({
    project: { audience: { kind: "adult" } },
    solids: [
      make.makeSolid({
        id: "seat",
        size: [400, depth + 100, 800],
        faces: [seatFace([400, depth], 430)],
      }),
    ],
  });
const overhanging = (overhang: number) =>
  make.makeWork({
    solids: [
      make.makeSolid({
        id: "seat",
        size: [400, 400, 300],
        mass: 0,
        centreOfMass: [200, 200, 150],
        faces: [seatFace([400, 400], 300)],
        blocks: [
          make.makeBlock({ id: "base", size: [400, 400 - overhang, 200], min: [0, overhang, 0] }),
          make.makeBlock({ id: "block", size: [400, 400, 100], min: [0, 0, 200] }),
        ],
      }),
    ],
  });
const standing = (y: number, z: number) =>
  make.makeWork({
    solids: [
      make.makeSolid({
        id: "seat",
        blocks: [make.makeBlock({ id: "block", size: [200, 200, 600] })],
        centreOfMass: [100, y, z],
      }),
    ],
  });
const drilled = (diameter: number) => {
  const radius = diameter / 2;
  const arc = (from: number, to: number) => ({
    kind: "arc" as const,
    from: [50 + from * radius, 50] as const,
    to: [50 + to * radius, 50] as const,
    centre: [50, 50] as const,
    isClockwise: true,
  });
  return make.makeWork({
    project: {
      audience: { kind: "age", years: 5 },
      stock: [
        {
          kind: "sheet",
          id: "ply",
          label: "ply",
          size: [1200, 600],
          thickness: 12,
          kerf: 3,
          grain: "none",
          have: 1,
          price: null,
        },
      ],
      pieces: [
        make.makePieceSpec({
          id: "lid",
          stock: "ply",
          outline: { ...make.rectangle(100, 100), holes: [[arc(-1, 1), arc(1, -1)]] },
        }),
      ],
    },
  });
};
const sawn = (kerf: number) =>
  make.makeWork({
    project: {
      stock: [
        {
          kind: "board",
          id: "batten",
          label: "batten",
          section: [34, 19],
          length: 2400,
          kerf,
          have: 1,
          price: null,
        },
      ],
    },
    boards: [
      make.makeCutPlan({
        stock: "batten",
        kind: "board",
        used: [
          {
            stockIndex: 1,
            size: [2400],
            places: [],
            offcuts: [],
            cuts: [{ order: 1, kind: "cross", axis: 0, at: 100, of: { at: [0], size: [2400] } }],
          },
        ],
      }),
    ],
  });
const layered = (layers: number) =>
  slabPlan({
    used: [
      {
        stockIndex: 1,
        size: [2000, 1000, 100],
        cuts: [],
        offcuts: [],
        places: [
          {
            part: "seat/block",
            copy: 1,
            at: [0, 0, 0],
            size: [100, 100, 100],
            layer: [1, layers],
            outline: null,
          },
        ],
      },
    ],
  });
const strip = (long: number, years: number) =>
  make.makeWork({
    project: aged(years, {
      solids: [
        make.makeSolidSpec({
          id: "seat",
          cover: make.makeCoverSpec({
            attach: [{ id: "loop", piece: "loop", on: "block/front", at: [0, 0] }],
          }),
        }),
      ],
      pieces: [make.makePieceSpec({ id: "loop", stock: "cloth", size: [long, 15] })],
    }),
  });

/** Two blocks on a slab, the second where it is put. */
const onSlab = (at: Point3) =>
  make.makeWork({
    solids: [
      buildSolid({
        id: "form",
        foam: null,
        blocks: [
          box("slab", [450, 400, 50]),
          box("near", [200, 200, 100], [0, 0, 50]),
          box("far", [200, 200, 100], at),
        ],
      }),
    ],
  });

const pairs: readonly Pair[] = [
  ...seatPairs,
  ...workPairs,
  {
    finding: "floats-apart",
    trips: pair([0, 0, 110], apart),
    nearMiss: pair([0, 0, 100], [["low", "high"]]),
  },
  {
    finding: "touches-at-an-edge",
    trips: pair([100, 0, 100], apart),
    nearMiss: pair([99, 0, 100], [["low", "high"]]),
  },
  { finding: "meets-in-a-line", trips: onSlab([200, 200, 50]), nearMiss: onSlab([210, 200, 50]) },
  { finding: "buried", trips: buried(1), nearMiss: buried(0.6) },
  { finding: "overlaps", trips: buried(0.2), nearMiss: buried(0) },
  {
    finding: "slab-short",
    trips: slabPlan({ needed: 3, have: 2, lowerBound: 2 }),
    nearMiss: slabPlan({ needed: 3, have: 3 }),
  },
  {
    finding: "part-does-not-fit",
    trips: slabPlan({
      short: [{ part: "seat/block", reason: "It is 10 mm too long.", remedy: "Make it shorter." }],
    }),
    nearMiss: slabPlan({ short: [] }),
  },
  { finding: "kerf-missing", trips: sawn(0), nearMiss: sawn(3) },
  { finding: "kerf-wide", trips: sawn(6), nearMiss: sawn(4.5) },
  { finding: "foam-tolerance", trips: layered(2), nearMiss: layered(1) },
  { finding: "density-low", trips: dense(29.9), nearMiss: dense(30) },
  { finding: "density-unknown", trips: dense(null), nearMiss: dense(30) },
  {
    finding: "cloth-short",
    trips: lay({ stock: "cloth", have: 900, short: 100 }),
    nearMiss: lay({ stock: "cloth", have: 1000, short: 0 }),
  },
  {
    finding: "too-wide",
    trips: lay({ stock: "cloth", unplaced: ["P1"] }),
    nearMiss: lay({ stock: "cloth", unplaced: [] }),
  },
  {
    finding: "repeat-unknown",
    trips: make.makeWork({
      project: { stock: [make.makeFabric({ repeat: null })] },
      lays: [make.makeLay({ stock: "cloth" })],
    }),
    nearMiss: make.makeWork({
      project: { stock: [make.makeFabric({ repeat: null, direction: "any" })] },
      lays: [make.makeLay({ stock: "cloth" })],
    }),
  },
  { finding: "print-turned", trips: turned(180, "one-way"), nearMiss: turned(180, "two-way") },
  { finding: "print-turned", trips: turned(90, "two-way"), nearMiss: turned(90, "any") },
  {
    finding: "print-turned",
    trips: turned(0, "one-way", 180),
    nearMiss: turned(90, "one-way", 270),
  },
  { finding: "mirrored", trips: mirrored(false), nearMiss: mirrored(true) },
  {
    finding: "refold",
    trips: covered({ refolds: { ok: false, worst: 12 } }),
    nearMiss: covered({ refolds: { ok: true, worst: 0.001 } }),
  },
  {
    finding: "print-extra",
    trips: lay({ stock: "cloth", printExtra: 30 }),
    nearMiss: lay({ stock: "cloth", printExtra: 0.5 }),
  },
  {
    finding: "sewing-order",
    trips: covered({ sewable: { ok: false, faults: ["seam A is not one unbroken run"] } }),
    nearMiss: covered({ sewable: { ok: true, faults: [] } }),
  },
  { finding: "eased", trips: easing(501), nearMiss: easing(500.4) },
  {
    finding: "opening-small",
    trips: covered({ opening: make.makeOpening({ fits: false, give: 0.4 }) }),
    nearMiss: covered({ opening: make.makeOpening({ fits: true, give: 0.2 }) }),
  },
  {
    finding: "zip-short",
    trips: covered({
      closing: make.makeClosing({ kind: "zip", run: 620, have: 600, buy: 660, short: 20 }),
    }),
    nearMiss: covered({
      closing: make.makeClosing({ kind: "zip", run: 600, have: 600, buy: 0, short: 0 }),
    }),
  },
  { finding: "cloth-lifts", trips: inward(null, [0, 0, 1]), nearMiss: inward("pad", [0, 0, 1]) },
  { finding: "cloth-lifts", trips: inward(null, [0, 0, 1]), nearMiss: inward(null, [1, 0, 0]) },
  {
    finding: "seat-high",
    trips: make.makeWork({ project: aged(4), solids: [seat(270)] }),
    nearMiss: make.makeWork({ project: aged(4), solids: [seat(260)] }),
  },
  {
    finding: "seat-low",
    trips: make.makeWork({ project: aged(10), solids: [seat(290, { size: [400, 400, 390] })] }),
    nearMiss: make.makeWork({ project: aged(10), solids: [seat(300, { size: [400, 400, 400] })] }),
  },
  {
    // A parent read that a pouf was too low to sit on: without a back it is low on purpose.
    finding: "seat-low",
    trips: make.makeWork({ project: aged(10), solids: [seat(200, { size: [400, 400, 300] })] }),
    nearMiss: make.makeWork({ project: aged(10), solids: [seat(200)] }),
  },
  { finding: "seat-deep", trips: backed(450), nearMiss: backed(430) },
  { finding: "tips-at-edge", trips: overhanging(70), nearMiss: overhanging(40) },
  { finding: "falls-over", trips: standing(-5, 100), nearMiss: standing(60, 100) },
  { finding: "top-heavy", trips: standing(100, 300), nearMiss: standing(100, 250) },
  {
    finding: "heavy",
    trips: make.makeWork({ solids: [make.makeSolid({ id: "seat", mass: 16.1 })] }),
    nearMiss: make.makeWork({ solids: [make.makeSolid({ id: "seat", mass: 16 })] }),
  },
  {
    finding: "cords",
    trips: covered({ closing: make.makeClosing({ kind: "ties" }) }, { project: aged(2) }),
    nearMiss: covered({ closing: make.makeClosing({ kind: "ties" }) }, { project: aged(3) }),
  },
  { finding: "cords", trips: strip(221, 2), nearMiss: strip(220, 2) },
  {
    finding: "small-parts",
    trips: make.makeWork({
      project: aged(2, {
        buy: [{ item: "Buttons, 18 mm", quantity: 4, unit: null, have: 0, price: null }],
      }),
    }),
    nearMiss: make.makeWork({
      project: aged(2, {
        buy: [{ item: "screws", quantity: 4, unit: null, have: 0, price: null }],
      }),
    }),
  },
  {
    finding: "zip-child",
    trips: covered({ closing: make.makeClosing({ kind: "zip" }) }, { project: aged(13) }),
    nearMiss: covered({ closing: make.makeClosing({ kind: "zip" }) }, { project: aged(14) }),
  },
  { finding: "finger-gap", trips: drilled(8), nearMiss: drilled(13) },
  { finding: "finger-gap", trips: netted(8), nearMiss: netted(6) },
  {
    finding: "fire",
    trips: make.makeWork({ solids: [seat(300)] }),
    nearMiss: pair([0, 0, 100], [["low", "high"]]),
  },
  {
    finding: "adhesive",
    trips: make.makeWork({
      solids: [make.makeSolid({ id: "seat", joints: [make.makeJoint(["a", "b"], 40000)] })],
    }),
    nearMiss: make.makeWork({ solids: [make.makeSolid({ id: "seat", joints: [] })] }),
  },
];

// A seat height may rest on one of three tables, by the sitter.
const seatSources = new Set(
  [
    { kind: "adult" } as const,
    { kind: "age", years: 6 } as const,
    { kind: "stature", stature: 850 } as const,
  ].map((audience) => seatFor(audience).source),
);

const kindsOf = (work: Work) => listFindings(work).map(({ id }) => id.split("/")[0]);

describe("findings", () => {
  test.each(pairs)(
    "$finding is found where it is and not in a near miss",
    ({ finding, trips, nearMiss }) => {
      expect(kindsOf(trips)).toContain(finding);
      expect(kindsOf(nearMiss)).not.toContain(finding);
    },
  );

  test.each(listRules())("$finding has a project that trips it and a near miss", ({ finding }) => {
    expect(pairs.some((one) => one.finding === finding)).toBe(true);
  });

  test("the table of checks names every finding, its check and its source", () => {
    const known = new Map(listRules().map((rule) => [rule.finding, rule]));
    for (const [name, check] of checks) {
      for (const { id, source } of pairs.flatMap(({ trips }) => check(trips))) {
        const rule = known.get(id.split("/")[0] ?? "");
        expect(rule?.check, id).toBe(name);
        if (!rule?.source.includes(".json") && !seatSources.has(source))
          expect(source.replace(/ \(wording reviewed [^)]*\)/, ""), id).toBe(rule?.source);
      }
    }
    expect(new Set(listRules().map(({ check }) => check))).toEqual(
      new Set(checks.map(([name]) => name)),
    );
  });

  test("no figure is left open in the words of the table", () => {
    for (const { limit } of listRules()) expect(limit).not.toMatch(/[{}]|undefined/);
  });

  test("every check in the list is tripped by some project of this table", () => {
    for (const [name, check] of checks) {
      expect(
        pairs.some(({ trips }) => check(trips).length > 0),
        name,
      ).toBe(true);
    }
  });

  const everything = [
    ...pairs.map(({ trips }) => trips),
    benchPad(),
    cornerSeat(),
    toyCrate(),
  ].flatMap(listFindings);

  test.each(everything)("$id says what, why and how in whole sentences", (finding) => {
    for (const text of [finding.message, finding.remedy]) {
      expect(text).toMatch(/^[\p{Lu}\p{Ll}\d].*\.$/u);
      expect(text).not.toMatch(/undefined|NaN|Infinity|null/);
    }
    expect(finding.source.length).toBeGreaterThan(10);
  });

  // Our choice, after a reader gave up half way: what the matter is in 55 words, what to do in 45, and
  // the address last in the source, after the last comma or semicolon.
  const countries = Object.values(fire.countries).map(({ message, remedy, source }) => ({
    id: message.slice(0, 30),
    message,
    remedy: `${fire.always} ${remedy}`,
    source,
  }));
  const supplies = Object.values(fire.countries).map(({ supply, source }) => ({
    id: `supply: ${supply.message.slice(0, 20)}`,
    ...supply,
    source,
  }));
  test.each([...everything, ...countries, ...supplies])(
    "$id is short",
    ({ message, remedy, source }) => {
      const words = (text: string) => text.split(/\s+/).length;
      expect(words(message)).toBeLessThanOrEqual(55);
      expect(words(remedy)).toBeLessThanOrEqual(45);
      if (source.includes("http")) expect(source).toMatch(/^((?!http).)*[,;] https?:\/\/[^\s,;]+$/);
    },
  );

  test("the fire finding names the rule of its country and sends the reader to those who know", () => {
    const { US, GB, EU } = fire.countries;
    expect(EU.message).toMatch(/European Union.*EN 1021/);
    expect(US.message).toMatch(/United States.*16 CFR 1640.*TB 117-2013/);
    expect(GB.message).toMatch(/United Kingdom.*Regulations 1988.*2025/);
    for (const { supply } of Object.values(fire.countries))
      expect(supply.remedy).toMatch(
        /your (?:state and local rules|trading standards office|local authority)/,
      );
  });

  test("none claims conformity", () => {
    for (const { message, remedy } of everything) {
      expect(`${message} ${remedy}`).not.toMatch(
        /\b(complies|conforms|certified|approved|is safe)\b/i,
      );
    }
  });

  test("the gravest stand first", () => {
    const order = ["danger", "warning", "caution", "note"];
    for (const work of [benchPad(), cornerSeat()]) {
      const ranks = listFindings(work).map(({ severity }) => order.indexOf(severity));
      expect(ranks).toEqual([...ranks].sort((one, other) => one - other));
    }
  });

  test("ids are unique within a project", () => {
    for (const work of [benchPad(), cornerSeat(), toyCrate()]) {
      const ids = listFindings(work).map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test("an inch project prints a limit of a standard in millimetres, not rounded to eighths", () => {
    const work = make.makeWork({ project: { ...drilled(8).project, units: "in" } });
    const gap = listFindings(work).find(({ id }) => id.startsWith("finger-gap"));
    expect(gap?.remedy).toContain("5 mm");
  });
});
