import type { Lay } from "../packing/types.ts";
import type { Panel } from "../panels/types.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import type { Degrees, Loop, Point } from "../plane/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import { jsonCuts } from "./plan-json-cuts.ts";
import type { PlanJson } from "./plan-schema.ts";
import type { Plan } from "./types.ts";

/**
 * Everything computed, as the object that is written to plan.json: mm, mm², kg, degrees, full
 * precision, keys in a fixed order. Arcs are flattened to 0.05 mm; outlines have y up and begin at
 * their lowest, then leftmost, corner.
 */
export function planJson(plan: Plan): PlanJson {
  const { project, solids, covers, pieces, lays } = plan;
  return {
    format: "slipcase-plan/1",
    title: project.title,
    units: project.units,
    slug: project.slug,
    copies: project.copies,
    solids: byId(
      solids,
      ({ id }) => id,
      (solid) => jsonSolid(solid, covers.find((cover) => cover.solid === solid.id) ?? null, lays),
    ),
    pieces: byId(pieces, ({ id }) => id, jsonPiece),
    lays: byId(lays, ({ stock }) => stock, jsonLay),
    slabs: byId(
      plan.slabs,
      ({ stock }) => stock,
      (cuts) => jsonCuts(cuts, solids),
    ),
    sheets: byId(
      plan.sheets,
      ({ stock }) => stock,
      (cuts) => jsonCuts(cuts, solids),
    ),
    boards: byId(
      plan.boards,
      ({ stock }) => stock,
      (cuts) => jsonCuts(cuts, solids),
    ),
    materials: plan.materials.map(
      ({ id, item, quantity, unit, unitWord, have, buy, basis, price }) => {
        return { id, item, quantity, unit: unitWord ?? unit, have, buy, basis, price };
      },
    ),
    steps: plan.steps.map(({ id, title, actions, uses, makes, cautions, check, figure }) => {
      return { id, title, actions, uses, makes, cautions, check, figure };
    }),
    findings: plan.findings.map(({ id, severity, about, message, remedy, source }) => {
      return { id, severity, about, message, remedy, source };
    }),
  };
}

/** An object with one key for each, in the order of the list. */
export const byId = <Each, Value>(
  list: readonly Each[],
  name: (each: Each) => string,
  value: (each: Each) => Value,
): Record<string, Value> => Object.fromEntries(list.map((each) => [name(each), value(each)]));

function jsonSolid(
  solid: Solid,
  cover: Cover | null,
  lays: readonly Lay[],
): PlanJson["solids"][string] {
  return {
    bounds: solid.size,
    volume: solid.volume,
    area: solid.area,
    mass: solid.mass,
    centreOfMass: solid.centreOfMass,
    blocks: byId(
      solid.blocks,
      ({ id }) => id,
      ({ size, volume }) => ({ size, volume }),
    ),
    joints: solid.joints.map(({ blocks, area }) => ({ blocks, area })),
    faces: solid.faces.map(({ id, names, label, area, normal, up }) => {
      return { id, names, label, area, normal, up };
    }),
    edges: solid.edges.map(({ faces, length, bend }) => ({ faces, length, bend })),
    ...jsonCover(cover, solid, lays),
  };
}

function jsonCover(cover: Cover | null, solid: Solid, lays: readonly Lay[]): CoverJson {
  if (cover === null) {
    return {
      panels: [],
      seams: [],
      ways: [],
      opening: null,
      refolds: null,
      closing: null,
      sewing: null,
      sizes: null,
    };
  }
  const { panels, pieces, seams, passes, sewable, ways, opening, closing, refolds } = cover;
  const lay = lays.find(({ stock }) => stock === cover.fabric) ?? null;
  return {
    panels: panels.map((panel) =>
      jsonPanel(
        panel,
        pieces.find((piece) => piece.panel === panel.id),
        lay,
      ),
    ),
    seams: seams.map((seam) => ({
      id: seam.id,
      panels: seam.panels,
      length: seam.length,
      order: seam.order,
      state: seam.state,
      corners: seam.corners.map(({ along, clip, turn }) => ({ along, clip, turn: turn / degree })),
    })),
    ways: ways.map((way) => ({
      id: way.id,
      panels: way.panels.length,
      seamLength: way.seamLength,
      clothLength: way.clothLength,
      turnedFaces: way.turnedFaces,
      inwardFolds: way.inwardFolds,
      chosen: way.isChosen,
    })),
    opening:
      opening === null
        ? null
        : {
            run: opening.run,
            girth: opening.girth,
            needed: opening.needed,
            give: opening.give,
            fits: opening.fits,
            reason: opening.reason,
          },
    refolds: { ok: refolds.ok, worst: refolds.worst },
    closing:
      closing === null
        ? null
        : {
            kind: closing.kind,
            run: closing.run,
            buy: closing.buy,
            have: closing.have,
            short: closing.short,
          },
    sewing: {
      ok: sewable.ok,
      faults: sewable.faults,
      passes: passes.map((pass) => ({
        seams: pass.seams,
        ring: pass.isRing,
        length: pass.length,
        corners: pass.corners.map(({ along, clip, turn }) => ({
          along,
          clip,
          turn: turn / degree,
        })),
        joins: pass.joins,
        makes: pass.makes,
      })),
    },
    sizes: jsonSizes(cover, solid),
  };
}

type CoverJson = Pick<
  PlanJson["solids"][string],
  "panels" | "seams" | "ways" | "opening" | "refolds" | "closing" | "sewing" | "sizes"
>;

function jsonSizes(cover: Cover, { blocks }: Solid): CoverJson["sizes"] {
  return {
    panels: cover.panels.map(({ id, size }) => ({
      id,
      foam: cover.foamPanels.find(({ panel }) => panel === id)?.size ?? null,
      finished: size,
      cut: cover.pieces.find(({ panel }) => panel === id)?.cutSize ?? size,
    })),
    blocks: blocks.map(({ id, size }) => ({
      id,
      foam: size,
      finished: cover.blockRoom.find(({ block }) => block === id)?.size ?? size,
    })),
  };
}

function jsonPanel(
  panel: Panel,
  piece: Piece | undefined,
  lay: Lay | null,
): CoverJson["panels"][number] {
  return {
    id: panel.id,
    label: panel.label,
    faces: panel.faces.map(({ face }) => face),
    cut: piece?.cut ?? 1,
    mirrorOf: panel.mirrorOf,
    outline: jsonOutline(panel.shape.outer),
    cutOutline: jsonOutline(piece?.outline.outer ?? panel.shape.outer),
    folds: panel.folds.map(({ faces, from, to, bend }) => ({ faces, from, to, bend })),
    print: panel.faces.map(({ face, turn }) => ({
      face,
      turn: printTurn(turn / degree, piece?.id, lay),
    })),
    area: panel.area,
    size: panel.size,
  };
}

/**
 * How far the print stands turned from upright on a face, counter-clockwise in [0, 360), once its
 * piece lies as the lay places it. The print runs along the cloth; a piece turned by t carries it
 * turned by −t, or by t when it was turned over first.
 */
function printTurn(faceTurn: Degrees, piece: string | undefined, lay: Lay | null): Degrees {
  const place = lay?.places.find((each) => each.piece === piece);
  const print = place === undefined ? 0 : place.flipped ? place.turn : -place.turn;
  const turn = (((print - faceTurn) % 360) + 360) % 360;
  return 360 - turn < 1e-9 || turn < 1e-9 ? 0 : turn;
}

const jsonPiece = (piece: Piece): PlanJson["pieces"][string] => ({
  label: piece.label,
  stock: piece.stock,
  cut: piece.cut,
  mirrorOf: piece.mirrorOf,
  outline: jsonOutline(piece.finished.outer),
  cutOutline: jsonOutline(piece.outline.outer),
  holes: piece.outline.holes.map(jsonOutline),
  area: piece.area,
  size: piece.cutSize,
  edges: piece.edges.map(({ length, allowance }) => ({ length, allowance })),
});

const jsonLay = (lay: Lay): PlanJson["lays"][string] => ({
  width: lay.width,
  length: lay.length,
  buy: lay.buy,
  have: lay.have,
  short: lay.short,
  yield: lay.yield,
  lowerBound: lay.lowerBound,
  separately: lay.separately,
  copies: lay.copies,
  places: lay.places.map(({ piece, copy, x, y, turn, flipped, outline }) => {
    return { piece, copy, x, y, turn, flipped, outline: fromLowestLeft(outline) };
  }),
  sections: (lay.sections ?? []).map(({ kind, label, start, length, outline, flaws }) => {
    return { kind, label, start, length, outline, flaws };
  }),
  splits: lay.splits ?? [],
  folded: lay.folded ?? null,
});

/** Corners of a loop, arcs flattened, from the lowest-left one. */
const jsonOutline = (loop: Loop): readonly Point[] => fromLowestLeft(flattenLoop(loop));

/** The same corners in the same order, beginning at the lowest, then leftmost. */
function fromLowestLeft(corners: readonly Point[]): readonly Point[] {
  const isLower = (a: Point, b: Point): boolean =>
    Math.abs(a[1] - b[1]) > 1e-6 ? a[1] < b[1] : a[0] < b[0] - 1e-6;
  const first = corners.reduce(
    (best, corner, i) => (isLower(corner, corners[best]!) ? i : best),
    0,
  );
  return [...corners.slice(first), ...corners.slice(0, first)];
}

/** Full precision without the last digits that only come of adding up: a millionth of a micrometre. */
const tidy = (_key: string, value: unknown): unknown =>
  typeof value === "number" ? Math.round(value * 1e9) / 1e9 : value;

/** plan.json as text, figures tidied; the same plan gives the same bytes. */
export const writePlanJson = (plan: Plan): string => JSON.stringify(planJson(plan), tidy, 1);

const degree = Math.PI / 180;
