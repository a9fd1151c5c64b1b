import { describe, expect, test } from "vitest";
import { listMaterials } from "../../lib/estimate/list-materials.ts";
import { benchPad } from "../fixtures/plans/bench-pad.ts";
import { cornerSeat } from "../fixtures/plans/corner-seat.ts";
import { makeWork } from "../fixtures/plans/make.ts";
import { toyCrate } from "../fixtures/plans/toy-crate.ts";

const line = (work: Parameters<typeof listMaterials>[0], id: string) => {
  const found = listMaterials(work).find((one) => one.id === id);
  if (found === undefined) throw new Error(`no line ${id}`);
  return found;
};

describe("the materials table", () => {
  test("lists a boxed pad from foam to the author's own lines", () => {
    expect(listMaterials(benchPad()).map((one) => one.id)).toEqual([
      "slab/seat-foam",
      "cloth/leaf-print",
      "zip/pad",
      "cord/pad",
      "piping-strips/pad",
      "thread",
      "buy/1",
    ]);
  });

  test("every basis carries a number with its unit, or says who listed it", () => {
    for (const work of [benchPad(), cornerSeat(), toyCrate()]) {
      for (const one of listMaterials(work)) {
        expect(one.basis, one.id).toMatch(/\d|Listed by the author/);
        expect(one.basis, one.id).toMatch(/\.$/);
        expect(one.basis, one.id).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
  });

  test("never buys more than is missing, and never less", () => {
    for (const work of [benchPad(), benchPad(3), cornerSeat(), toyCrate()]) {
      for (const one of listMaterials(work).filter(
        ({ group }) => group === "foam" || group === "sheet" || group === "board",
      )) {
        expect(one.buy).toBe(Math.max(0, one.quantity - one.have));
      }
    }
  });

  test("a class of three takes three times the sewn goods", () => {
    for (const id of ["thread", "cord/pad", "zip/pad"]) {
      expect(line(benchPad(3), id).quantity).toBeCloseTo(3 * line(benchPad(), id).quantity, 9);
      expect(line(benchPad(3), id).perCopy).toBeCloseTo(line(benchPad(), id).quantity, 9);
    }
  });

  test("a zip that is too short is bought at the next length sold", () => {
    const zip = line(benchPad(), "zip/pad");
    expect(zip.item).toBe("long zip, 125 cm");
    expect([zip.have, zip.buy, zip.price]).toEqual([0, 1, 6]);
  });

  test("adhesive is an area on both sides and leaves the coverage to the can", () => {
    const glue = line(cornerSeat(), "adhesive/seat");
    expect(glue.quantity).toBeCloseTo(2 * 24 * 6 * 25.4 ** 2, 6);
    expect(glue.basis).toContain("coverage on the can");
  });

  test("thread adds up to the seams by hand", () => {
    // Worked by hand: two side seams of 42 in, two of 24, two of 18, and 24 in closed by hand.
    const seams = 2 * 42 + 2 * 24 + 2 * 18;
    expect(line(cornerSeat(), "thread").quantity / 25.4).toBeCloseTo((seams + 24) * 2.5 * 1.15, 6);
  });

  test("boards and sheets are priced only for what is missing", () => {
    expect(line(toyCrate(), "sheet/birch").price).toBe(0);
    expect(line(toyCrate(), "board/batten").price).toBe(4);
    expect(line(toyCrate(), "buy/1").price).toBeCloseTo(1.2, 9);
  });

  test("an empty project needs nothing", () => {
    expect(listMaterials(makeWork())).toEqual([]);
  });
});
