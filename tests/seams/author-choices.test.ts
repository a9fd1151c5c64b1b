import { describe, expect, test } from "vitest";
import type { BlockSpec, CoverSpec, NamedPanel, PanelRule } from "../../lib/project/types.ts";
import type { Cover, Seam } from "../../lib/seams/types.ts";
import { facesNamed } from "../../lib/panels/find-face.ts";
import type { Solid } from "../../lib/solids/types.ts";
import { box, cylinder, prism, wedge } from "../fixtures/blocks.ts";
import { listPanels, tryCover } from "../fixtures/make-cover.ts";

// What broke: a closing across a strip, an open pair, a hinge or a piped edge that the search folded over
// was left out without a word. Every choice of the author now shows on the cover, or a fault or a
// finding names its field.

interface Form {
  readonly name: string;
  readonly blocks: readonly BlockSpec[];
  /** A face with a neighbour, and that neighbour. */
  readonly face: string;
  readonly next: string;
  /** Folds `face` and `next` into one panel. */
  readonly list: readonly NamedPanel[];
}

const forms: readonly Form[] = [
  {
    name: "box",
    blocks: [box("b", [500, 400, 80])],
    face: "b/back",
    next: "b/top",
    list: listPanels(["b/back", "b/top"]),
  },
  {
    name: "L",
    blocks: [box("b", [400, 300, 150]), box("up", [400, 100, 200], [0, 300, 0])],
    face: "b/top",
    next: "up/front",
    list: listPanels(["b/top", "up/front"]),
  },
  {
    name: "cylinder",
    blocks: [cylinder("b", 300, 200)],
    face: "b/top",
    next: "b/around",
    list: listPanels(["b/around"]),
  },
  {
    name: "wedge",
    blocks: [wedge("b", [500, 400, 200], "back")],
    face: "b/slope",
    next: "b/back",
    list: listPanels(["b/slope", "b/back"]),
  },
  {
    name: "prism",
    blocks: [
      prism(
        "b",
        [
          [0, 0],
          [600, 0],
          [500, 400],
          [100, 400],
        ],
        80,
      ),
    ],
    face: "b/side-1",
    next: "b/top",
    list: listPanels(["b/side-1", "b/top"]),
  },
];

const rules: readonly (PanelRule | "list")[] = [
  "auto",
  "fewest",
  "least-cloth",
  "upright",
  "plain",
  "list",
];

interface Seen {
  readonly form: Form;
  readonly solid: Solid;
  readonly cover: Cover;
}

interface Choice {
  readonly name: string;
  /** Dotted path of the choice below the cover, or two with a stroke between. */
  readonly field: string;
  readonly spec: (form: Form) => Partial<CoverSpec>;
  /** Whether the cover shows it. */
  readonly isKept: (seen: Seen) => boolean;
}

const idsOf = (solid: Solid, name: string) => facesNamed(solid, name).map(({ id }) => id);
const edgesRound = (solid: Solid, name: string): string[] => {
  const ids = idsOf(solid, name);
  return solid.edges
    .filter(({ faces: [a, b] }) => ids.includes(a) !== ids.includes(b))
    .map(({ id }) => id);
};
const edgesBetween = (solid: Solid, one: string, other: string): string[] => {
  const round = edgesRound(solid, other);
  return edgesRound(solid, one).filter((edge) => round.includes(edge));
};
const seamAt = (cover: Cover, edge: string): Seam | undefined =>
  cover.seams.find(({ edges }) => edges.includes(edge));
const isOpen = (cover: Cover, edge: string): boolean =>
  (seamAt(cover, edge)?.state ?? "sewn") !== "sewn";
const zip = { kind: "zip", stock: null } as const;

const choices: readonly Choice[] = [
  {
    name: "a zip across a face",
    field: "closing",
    spec: ({ face }) => ({ closing: { ...zip, across: face } }),
    isKept: ({ cover }) =>
      cover.opening!.edges.length === 1 &&
      cover.seams.some(
        ({ state, edges }) => state === "closing" && edges.some((edge) => edge.includes("~")),
      ),
  },
  {
    name: "an open pair",
    field: "open",
    spec: ({ face, next }) => ({ open: [{ kind: "between", faces: [face, next] }], closing: zip }),
    isKept: ({ solid, cover, form }) =>
      edgesBetween(solid, form.face, form.next).every((edge) => isOpen(cover, edge)),
  },
  {
    name: "an open face",
    field: "open",
    spec: ({ face }) => ({ open: [{ kind: "face", face }] }),
    isKept: ({ solid, cover, form }) => {
      const round = edgesRound(solid, form.face);
      const seams = round.filter((edge) => seamAt(cover, edge) !== undefined);
      const shut = seams.filter((edge) => !isOpen(cover, edge));
      return shut.length + (round.length - seams.length) === (round.length > 1 ? 1 : 0);
    },
  },
  {
    name: "an open face on a hinge",
    field: "open|hinge",
    spec: ({ face, next }) => ({ open: [{ kind: "face", face }], hinge: next }),
    isKept: ({ solid, cover, form }) => {
      const [hinge] = edgesBetween(solid, form.face, form.next);
      return (
        !isOpen(cover, hinge!) &&
        edgesRound(solid, form.face).every((edge) => edge === hinge || isOpen(cover, edge))
      );
    },
  },
  {
    name: "a hinge without an open face",
    field: "hinge",
    spec: ({ next }) => ({ hinge: next }),
    isKept: () => false,
  },
  {
    name: "piping round a face",
    field: "piping",
    spec: ({ face }) => ({ piping: { cord: 5, along: [face], cut: "bias" } }),
    isKept: ({ solid, cover, form }) =>
      edgesRound(solid, form.face).every((edge) => seamAt(cover, edge)?.isPiped === true),
  },
  {
    name: "a seam in the inward corner",
    field: "anchor",
    spec: () => ({ anchor: "seam" }),
    isKept: ({ solid, cover }) => {
      const inward = solid.edges.filter(({ bend }) => bend === "inward");
      return inward.length > 0 && inward.every(({ id }) => seamAt(cover, id) !== undefined);
    },
  },
  {
    name: "a motif in the middle",
    field: "print",
    spec: ({ face }) => ({ print: { centre: [face], match: [] } }),
    isKept: ({ cover, form, solid }) => {
      const [face] = idsOf(solid, form.face);
      const panel = cover.panels.find(({ faces }) => faces.some((one) => one.face === face));
      return cover.pieces.find((one) => one.panel === panel!.id)!.printOrigin !== undefined;
    },
  },
  {
    name: "a print that runs on",
    field: "print",
    spec: ({ face, next }) => ({ print: { centre: [], match: [[face, next]] } }),
    isKept: ({ cover, form, solid }) => {
      const [edge] = edgesBetween(solid, form.face, form.next);
      const seam = seamAt(cover, edge!);
      const placed = cover.pieces.filter(({ printOrigin }) => printOrigin !== undefined);
      return (
        seam === undefined ||
        seam.panels.every((panel) => placed.some((piece) => piece.panel === panel))
      );
    },
  },
  {
    name: "a print turned on one face",
    field: "up",
    spec: ({ face }) => ({ up: { [face]: "left" } }),
    isKept: ({ solid, form }) => facesNamed(solid, form.face).every(({ up }) => up[0] < -0.9),
  },
  {
    name: "a handle on a face",
    field: "attach",
    spec: ({ face }) => ({
      attach: [{ id: "handle", piece: "handle", on: face, at: ["centre", "centre"] }],
    }),
    isKept: ({ cover }) =>
      cover.pieces.flatMap(({ marks }) => marks).filter(({ kind }) => kind === "middle").length ===
      1,
  },
];

const table = forms.flatMap((form) =>
  choices.map((choice) => ({ form: form.name, choice: choice.name, shape: form, asked: choice })),
);

describe("a closing across a strip of a listed panel", () => {
  test("leaves each half with the faces that hang on it alone", () => {
    const { cover, faults } = tryCover(forms[0]!.blocks, {
      panels: listPanels(["b/back", "b/top"], ["b/underside"]),
      closing: { ...zip, across: "b/back" },
    });
    expect(faults).toEqual([]);
    expect(cover!.panels.map(({ label }) => label)).toContain("b/back, lower half");
    expect(cover!.panels.find(({ label }) => label === "b/back, upper half")!.faces.length).toBe(2);
  });

  test("is cut out of a band that runs round on both sides of it", () => {
    const { cover, faults } = tryCover(forms[0]!.blocks, {
      panels: listPanels(["b/left", "b/back", "b/right"]),
      closing: { ...zip, across: "b/back" },
    });
    expect(faults).toEqual([]);
    const labels = cover!.panels.map(({ label }) => label);
    expect(labels).toEqual(
      expect.arrayContaining(["b/left, lower half", "b/left, upper half", "b/left 1", "b/left 2"]),
    );
    expect(cover!.sewable.faults).toEqual([]);
    expect(cover!.refolds.ok).toBe(true);
  });
});

describe("a choice of the author", () => {
  test.each(table)("$choice on a $form is kept, or said to be lost", ({ shape, asked }) => {
    for (const rule of rules) {
      const { cover, fitted, faults } = tryCover(
        shape.blocks,
        { panels: rule === "list" ? shape.list : rule, ...asked.spec(shape) },
        { fabric: { direction: "one-way", repeat: { along: 100, across: 100 } } },
      );
      if (cover === null) {
        expect(faults.length, rule).toBeGreaterThan(0);
        for (const { field } of faults)
          expect(field, rule).toMatch(new RegExp(`^solids\\.form\\.cover\\.(${asked.field})`));
        continue;
      }
      const isLost = cover.lost.some(({ field }) => new RegExp(`^(${asked.field})`).test(field));
      const isKept = asked.isKept({ form: shape, solid: fitted, cover });
      expect(isKept !== isLost, `${rule}: kept ${isKept}, lost ${isLost}`).toBe(true);
      expect(cover.refolds.ok, rule).toBe(true);
      expect(cover.sewable.faults, rule).toEqual([]);
    }
  });
});
