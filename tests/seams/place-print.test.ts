import { describe, expect, test } from "vitest";
import { toLayPiece } from "../../lib/booklet/plan-lays.ts";
import { layCloth } from "../../lib/packing/lay-cloth.ts";
import { flattenLoop } from "../../lib/plane/flatten-loop.ts";
import { loopBounds, pointBounds } from "../../lib/plane/loop-bounds.ts";
import { placePoint } from "../../lib/plane/place.ts";
import type { Mm, Point } from "../../lib/plane/types.ts";
import type { CoverSpec } from "../../lib/project/types.ts";
import { buildCover } from "../../lib/seams/build-cover.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { box, cloth, coverSpec } from "../fixtures/blocks.ts";

const repeat = { along: 160, across: 230 };
const sides = ["top", "underside", "front", "right", "back", "left"].map((side) => `pad/${side}`);
const allApart = sides.map((face) => ({ name: face, faces: [face] }));

function lay(print: NonNullable<CoverSpec["print"]>, shrink = 0) {
  const fabric = cloth({ width: 1400, direction: "one-way", repeat, shrink });
  const spec = {
    id: "form",
    foam: null,
    blocks: [box("pad", [520, 410, 120])],
    cover: coverSpec({ panels: allApart, print }),
  };
  const foam = buildSolid(spec);
  const { cover, fitted, faults } = buildCover({ stock: [fabric], pieces: [] }, spec, foam, {
    prefix: "",
    hardness: null,
    format: (length) => `${length} mm`,
  });
  const laid = cover === null ? null : layCloth(cover.pieces.map(toLayPiece), fabric);
  return { cover, fitted, faults, laid, shrink };
}

type Laid = ReturnType<typeof lay>;

/** Where a point of a panel's seam plane comes to lie on the cloth. */
function onCloth({ cover, laid, shrink }: Laid, panel: string, [x, y]: Point): Point {
  const piece = cover!.pieces.find(({ id }) => id === panel)!;
  const { min } = pointBounds(flattenLoop(piece.outline.outer));
  const place = laid!.places.find((one) => one.piece === panel)!;
  const by = 1 / (1 - shrink);
  return [place.x + x * by - min[0], place.y + y * by - min[1]];
}

const panelOf = ({ cover }: Laid, face: string) =>
  cover!.panels.find(({ faces }) => faces.some((one) => one.face === face))!;

/** How far two places lie apart in the print, whole repeats left out. */
const off = (a: Mm, b: Mm, step: Mm): Mm => Math.abs(a - b - step * Math.round((a - b) / step));

describe("print", () => {
  test.each([0, 0.03])("runs on across every matched seam, the cloth shrinking by %d", (shrink) => {
    const match = [
      ["pad/top", "pad/front"],
      ["pad/front", "pad/right"],
    ] as const;
    const made = lay({ centre: [], match }, shrink);
    expect(made.faults).toEqual([]);
    for (const [a, b] of match) {
      const [one, other] = [panelOf(made, a), panelOf(made, b)];
      // Both panels have the edge between the faces: its ends are the same two places of the cover.
      const edges = one.loops.flat().map(({ edge }) => edge);
      const shared = other.loops.flat().find(({ edge }) => edges.includes(edge))!;
      const own = one.loops.flat().find(({ edge }) => edge === shared.edge)!;
      const ends = [
        [own.segments[0]!.from, shared.segments.at(-1)!.to],
        [own.segments.at(-1)!.to, shared.segments[0]!.from],
      ] as const;
      for (const [p, q] of ends) {
        const [here, there] = [onCloth(made, one.id, p), onCloth(made, other.id, q)];
        expect(off(here[0], there[0], repeat.across)).toBeLessThan(1e-6);
        expect(off(here[1], there[1], repeat.along)).toBeLessThan(1e-6);
      }
    }
  });

  test("has the middle of each named face half a repeat past the start of one", () => {
    const made = lay({ centre: ["pad/top", "pad/back"], match: [] });
    for (const name of ["pad/top", "pad/back"]) {
      const face = made.fitted.faces.find(({ id }) => id === name)!;
      const panel = panelOf(made, name);
      const { min, max } = loopBounds(face.shape.outer);
      const middle = placePoint(
        [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2],
        panel.faces[0]!.placement,
      );
      const [x, y] = onCloth(made, panel.id, middle);
      // The lay counts from inside the selvedge, where the print begins.
      expect(off(x - made.laid!.selvedge, repeat.across / 2, repeat.across)).toBeLessThan(1e-6);
      expect(off(y, repeat.along / 2, repeat.along)).toBeLessThan(1e-6);
    }
  });

  test("never overlaps, and never takes less cloth than a free lay", () => {
    const free = lay({ centre: [], match: [] });
    const bound = lay({ centre: ["pad/top"], match: [["pad/top", "pad/front"]] });
    expect(bound.laid!.unplaced).toEqual([]);
    expect(bound.laid!.length).toBeGreaterThanOrEqual(free.laid!.length - 1e-6);
  });

  test.each([
    [{ centre: [], match: [["pad/top", "pad/underside"]] as const }, /do not meet/],
    [{ centre: [], match: [["pad/top", "pad/right"]] as const }, /turned/],
    [{ centre: ["pad/top", "pad/front"], match: [["pad/top", "pad/front"]] as const }, /met/],
  ])("that cannot be had is refused with a reason", (print, reason) => {
    const [fault] = lay(print).faults;
    expect(`${fault?.fault} ${fault?.fix}`).toMatch(reason);
  });
});
