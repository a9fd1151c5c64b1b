// Pairs of projects for the checks of sewing, wood, buying and finishes.
import type { BoardStock, BuyLine, SheetStock } from "../../lib/project/types.ts";
import * as make from "../fixtures/plans/make.ts";
import type { Pair } from "./seat-pairs.ts";

const batten = (given: Partial<BoardStock> = {}): BoardStock => ({
  kind: "board",
  id: "batten",
  label: "batten",
  section: [40, 20],
  length: 2400,
  kerf: 3,
  have: 0,
  price: 4,
  ...given,
});
const ply = (given: Partial<SheetStock> = {}): SheetStock => ({
  kind: "sheet",
  id: "ply",
  label: "plywood",
  size: [1220, 610],
  thickness: 12,
  kerf: 3,
  grain: "along",
  have: 1,
  price: null,
  ...given,
});
const line = (item: string, quantity = 1, unit: string | null = null): BuyLine => ({
  item,
  quantity,
  unit,
  have: 0,
  price: null,
});

/** Two rails of 1100 mm: one long board holds both, and so do two short ones that cost less. */
const rails = (shortPrice: number) =>
  make.makeWork({
    project: {
      stock: [
        batten({ price: 9 }),
        batten({ id: "short", label: "short batten", length: 1200, price: shortPrice }),
      ],
      pieces: [make.makePieceSpec({ id: "rail", stock: "batten", size: [1100, 40], cut: 2 })],
    },
    boards: [
      make.makeCutPlan({ stock: "batten", kind: "board", needed: 1, have: 0, lowerBound: 1 }),
    ],
  });

/** Two upright posts under a rail, and so many screws. */
const frame = (screws: number) =>
  make.makeWork({
    project: {
      stock: [batten()],
      buy: [line("screws 4 × 40 mm", screws)],
      pieces: [
        make.makePieceSpec({
          id: "post",
          stock: "batten",
          size: [300, 40],
          cut: 2,
          at: [0, 0, 0],
          others: [[360, 0, 0]],
          along: "z",
          thin: "y",
        }),
        make.makePieceSpec({
          id: "rail",
          stock: "batten",
          size: [400, 40],
          at: [0, -20, 260],
          along: "x",
          thin: "y",
        }),
      ],
    },
  });

/** Two slats on edge, so far apart. */
const slats = (gap: number) =>
  make.makeWork({
    project: {
      audience: { kind: "age", years: 4 },
      stock: [batten()],
      pieces: [
        make.makePieceSpec({
          id: "slat",
          stock: "batten",
          size: [400, 40],
          cut: 2,
          at: [0, 0, 0],
          others: [[0, 0, 40 + gap]],
          along: "x",
          thin: "y",
        }),
      ],
    },
  });

const sewn = (weight: number | null, more: object = {}, thickness: number | null = null) =>
  make.makeWork({
    project: { stock: [make.makeFabric({ weight, thickness })] },
    covers: [
      make.makeCover({
        solid: "seat",
        seams: [make.makeSeam({ id: "A", panels: ["P1", "P2"], ...more })],
      }),
    ],
  });
const carried = (mass: number, narrow: number) =>
  make.makeWork({
    project: {
      stock: [make.makeFabric()],
      solids: [
        make.makeSolidSpec({
          id: "seat",
          cover: make.makeCoverSpec({
            attach: [{ id: "grip", piece: "handle", on: "block/front", at: [0, 0] }],
          }),
        }),
      ],
      pieces: [make.makePieceSpec({ id: "handle", stock: "cloth", size: [240, narrow] })],
    },
    solids: [make.makeSolid({ id: "seat", mass })],
  });
const shut = (kind: "hand-sewn" | "zip") =>
  make.makeWork({
    project: { audience: { kind: "age", years: 5 }, stock: [make.makeFabric()] },
    covers: [make.makeCover({ solid: "seat", closing: make.makeClosing({ kind }) })],
  });
const bought = (item: string) => make.makeWork({ project: { buy: [line(item)] } });
const planned = (kind: "sheet" | "board", needed: number) =>
  make.makeWork({
    project: { stock: [kind === "sheet" ? ply() : batten()] },
    [kind === "sheet" ? "sheets" : "boards"]: [
      make.makeCutPlan({ stock: kind === "sheet" ? "ply" : "batten", kind, needed, have: 2 }),
    ],
  });
const sheetOf = (thickness: number) =>
  make.makeWork({
    project: { stock: [ply({ size: [2440, 1220], thickness })] },
    sheets: [make.makeCutPlan({ stock: "ply", kind: "sheet" })],
  });
const foamed = (country: string | null, foam: string | null) =>
  make.makeWork({
    project: { country },
    solids: [make.makeSolid({ id: "seat", blocks: [make.makeBlock({ id: "block", foam })] })],
  });

const fitted = (larger: number) =>
  make.makeWork({
    covers: [
      make.makeCover({
        solid: "seat",
        foamSize: [600, 500, 100],
        coverSize: [600 + larger, 500 + larger, 100],
      }),
    ],
  });

/** A cover with so many choices that came to nothing. */
const losing = (count: number) =>
  make.makeWork({
    project: { stock: [make.makeFabric()] },
    covers: [
      make.makeCover({
        solid: "seat",
        lost: Array.from({ length: count }, () => ({
          field: "anchor",
          message: "The form has no inward corner.",
          remedy: "Take anchor out.",
        })),
      }),
    ],
  });

export const workPairs: readonly Pair[] = [
  { finding: "choice-lost", trips: losing(1), nearMiss: losing(0) },
  { finding: "cover-tight", trips: fitted(-26), nearMiss: fitted(-25.4) },
  { finding: "cover-loose", trips: fitted(77), nearMiss: fitted(76.2) },
  { finding: "cheaper-stock", trips: rails(4), nearMiss: rails(4.5) },
  { finding: "sheet-short", trips: planned("sheet", 3), nearMiss: planned("sheet", 2) },
  { finding: "board-short", trips: planned("board", 3), nearMiss: planned("board", 2) },
  { finding: "screws-few", trips: frame(3), nearMiss: frame(4) },
  { finding: "finger-gap", trips: slats(8), nearMiss: slats(4) },
  { finding: "finger-gap", trips: slats(12), nearMiss: slats(13) },
  // 650 kg/m³: a full sheet of 9 mm weighs 17.4 kg, one of 8 mm 15.5 kg.
  { finding: "heavy-stock", trips: sheetOf(9), nearMiss: sheetOf(8) },
  { finding: "sewing-setup", trips: sewn(280), nearMiss: sewn(null) },
  { finding: "thick-crossing", trips: sewn(null, {}, 1.1), nearMiss: sewn(null, {}, 1) },
  {
    finding: "thick-crossing",
    trips: sewn(280, { isPiped: true }),
    nearMiss: sewn(280, { isPiped: false }),
  },
  { finding: "handle-weak", trips: carried(14, 15), nearMiss: carried(14, 50) },
  {
    finding: "print-extra",
    trips: make.makeWork({
      project: { stock: [make.makeFabric()] },
      lays: [make.makeLay({ stock: "cloth", printExtra: 1 })],
    }),
    nearMiss: make.makeWork({
      project: { stock: [make.makeFabric()] },
      lays: [make.makeLay({ stock: "cloth", printExtra: 0.9 })],
    }),
  },
  { finding: "cover-stays", trips: shut("hand-sewn"), nearMiss: shut("zip") },
  { finding: "oily-rags", trips: bought("Danish oil"), nearMiss: bought("wax crayons") },
  { finding: "fire", trips: foamed("GB", "foam"), nearMiss: foamed("GB", null) },
  { finding: "fire-supply", trips: foamed("FR", "foam"), nearMiss: foamed("FR", null) },
  { finding: "fire-supply", trips: foamed(null, "foam"), nearMiss: foamed(null, null) },
];
