import { describe, expect, test } from "vitest";
import { jointsBetween } from "../../lib/estimate/joints-between.ts";
import { listMaterials } from "../../lib/estimate/list-materials.ts";
import { screwsFor } from "../../lib/estimate/screws-for.ts";
import type { BuyLine } from "../../lib/project/types.ts";
import * as make from "../fixtures/plans/make.ts";

const spread = (use: "adhesive" | "finish", covers: number): BuyLine => ({
  item: `${use} of some kind`,
  quantity: 0,
  unit: "can",
  have: 0,
  price: 5,
  use,
  covers,
});
const glued = (buy: readonly BuyLine[], copies = 1) =>
  make.makeWork({
    project: { buy, copies },
    solids: [make.makeSolid({ id: "seat", joints: [make.makeJoint(["a", "b"], 600_000)] })],
  });
/** One sheet part of 1 m × 0.5 m × 10 mm: 1.03 m² of faces and edges, worked by hand. */
const wooden = (buy: readonly BuyLine[], copies = 1) =>
  make.makeWork({
    project: {
      buy,
      copies,
      stock: [
        {
          kind: "sheet",
          id: "ply",
          label: "plywood",
          size: [1220, 610],
          thickness: 10,
          kerf: 3,
          grain: "none",
          have: 1,
          price: null,
        },
      ],
      pieces: [make.makePieceSpec({ id: "lid", stock: "ply", size: [1000, 500] })],
    },
  });
const lineOf = (work: ReturnType<typeof make.makeWork>, id: string) =>
  listMaterials(work).find((line) => line.id === id);

describe("what is spread", () => {
  test("adhesive without a coverage is an area and nothing is guessed", () => {
    const line = lineOf(glued([]), "adhesive/seat");
    expect(line?.buy).toBe(1_200_000);
    expect(line?.basis).toContain("coverage on the can");
  });

  test.each([
    [1.2e6, 1, 1],
    [1.1e6, 1, 2],
    [1.1e6, 3, 4],
  ])("a can that covers %d mm², for %d copies, is bought %d times", (covers, copies, cans) => {
    const work = glued([spread("adhesive", covers)], copies);
    expect(lineOf(work, "buy/1")).toMatchObject({ quantity: cans, buy: cans, price: 5 * cans });
    expect(lineOf(work, "buy/1")?.basis).toMatch(/m² to coat, and one covers .* by its label/);
    expect(lineOf(work, "adhesive/seat")?.buy).toBe(0);
  });

  test("wood is finished on both faces and all edges", () => {
    expect(lineOf(wooden([]), "finish")?.quantity).toBeCloseTo(1_030_000, 6);
    expect(lineOf(wooden([], 4), "finish")?.quantity).toBeCloseTo(4_120_000, 6);
    expect(lineOf(wooden([spread("finish", 1e6)]), "buy/1")?.quantity).toBe(2);
  });

  // Foster 81-10 data sheet, Scribd 76887050: 200 to 400 ft² a US gallon are 4.9 to 9.8 m² a litre
  test.each([
    [200, 4.9],
    [400, 9.8],
  ])("%d ft² a gallon are %d m² a litre", (perGallon, perLitre) => {
    expect((perGallon * 304.8 ** 2) / 1e6 / 3.785411784).toBeCloseTo(perLitre, 1);
  });
});

describe("screws by the joints of placed parts", () => {
  const crate = (places: readonly (readonly [number, number, number])[]) => {
    const [at = [0, 0, 0] as const, ...others] = places;
    return make.makeProject({
      stock: [
        {
          kind: "board",
          id: "batten",
          label: "batten",
          section: [40, 20],
          length: 2400,
          kerf: 3,
          have: 1,
          price: null,
        },
      ],
      pieces: [
        make.makePieceSpec({
          id: "slat",
          stock: "batten",
          size: [400, 40],
          cut: places.length,
          at,
          others,
          along: "x",
          thin: "z",
        }),
      ],
    });
  };

  test("boards on one another share a face, and each further one takes two screws", () => {
    const joints = jointsBetween(
      crate([
        [0, 0, 0],
        [0, 0, 20],
        [0, 0, 40],
      ]),
    );
    expect(joints.map(({ size }) => size)).toEqual([
      [40, 400],
      [40, 400],
    ]);
    expect(screwsFor(joints)).toBe(4);
  });

  test("a ring of four parts takes no more than what holds it together", () => {
    const joints = jointsBetween(
      crate([
        [0, 0, 0],
        [0, 40, 0],
        [0, 0, 20],
        [0, 40, 20],
      ]),
    );
    expect(joints).toHaveLength(4);
    expect(screwsFor(joints)).toBe(6);
  });

  test("parts that touch along an edge, or not at all, have no joint", () => {
    expect(
      jointsBetween(
        crate([
          [0, 0, 0],
          [0, 40, 20],
          [0, 200, 0],
        ]),
      ),
    ).toEqual([]);
  });
});
