import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boxCushion } from "../../lib/estimate/box-cushion.ts";
import { containerCoverage, containersFor } from "../../lib/estimate/coverage.ts";
import { finishArea } from "../../lib/estimate/finish-area.ts";
import { nextStockLength } from "../../lib/estimate/next-stock-length.ts";
import { orderWithRepeat, roundUpToRepeat } from "../../lib/estimate/round-up-to-repeat.ts";
import { straightStrips } from "../../lib/estimate/straight-strips.ts";
import { wrapBlank } from "../../lib/estimate/wrap-blank.ts";
import cushions from "../../shared/tables/box-cushions.json" with { type: "json" };
import zips from "../../shared/tables/zip-lengths.json" with { type: "json" };

const repeats = [
  {
    length: 96,
    repeat: 27,
    cut: 108,
    source:
      "Meredith, Figuring Pattern Repeats, http://www.diyideas.com/howto/sewing-fabric/fabricrepeats_3.html",
  },
  {
    length: 90,
    repeat: 27,
    cut: 108,
    source:
      "Pate-Meadows, Matching Repeats, https://www.patemeadows.com/Matching-RepeatsPatterned-Fabric_ep_56.html",
  },
  {
    length: 116,
    repeat: 25,
    cut: 125,
    source: "Workroom Threads, Aug 2011, http://spotidoc.com/doc/91348/workroom-threads",
  },
  {
    length: 114,
    repeat: 4.5,
    cut: 117,
    source: "http://fayefortune.blogspot.com/2012/03/how-to-figure-fabric-repeat-for.html",
  },
];

describe("rounding up to the pattern repeat", () => {
  test.each(repeats)(
    "$length in on a $repeat in repeat is cut $cut in ($source)",
    ({ length, repeat, cut }) => {
      expect(roundUpToRepeat(length, repeat)).toBeCloseTo(cut, 9);
    },
  );

  // fayefortune.blogspot.com, as above: 2 × 117 in and one repeat
  test("two panels of 114 in on a 4 1/2 in repeat are ordered as 6.625 yd", () => {
    expect(orderWithRepeat(114, 4.5, 2) / 36).toBeCloseTo(6.625, 9);
  });

  // http://www.mgrsewing.com/serger/janome/curtain-sewing-instructions-pattern-repeat-calculation.htm
  test("two widths of 100 in on a 26 in repeat lie between 5.78 and 7 yd", () => {
    const yards = orderWithRepeat(100, 26, 2) / 36;
    expect(yards).toBeGreaterThanOrEqual((2 * 104) / 36);
    expect(yards).toBeLessThanOrEqual(7);
  });

  // Kothea, https://www.kothea.com/tag/fabric-quantity-calculation/: one repeat for each cut is a ceiling
  test("an order never passes one repeat more for each cut and one for the start", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4000 }),
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 1, max: 9 }),
        (length, repeat, cuts) => {
          const order = orderWithRepeat(length, repeat, cuts);
          expect(order).toBeGreaterThanOrEqual(cuts * length + repeat);
          expect(order).toBeLessThanOrEqual(cuts * (length + repeat) + repeat);
        },
      ),
    );
    expect(roundUpToRepeat(250, 50)).toBe(250);
    expect(roundUpToRepeat(250, 0)).toBe(250);
  });
});

describe("zips by the lengths they are sold in", () => {
  const sold = zips.rows.map(([centimetres]) => (centimetres ?? 0) * 10);

  // UK Sewing Services guide, http://www.supplydivision.co.uk/offers/sewguide.htm
  test.each([
    [440, 460],
    [460, 460],
    [470, 510],
    [610, 610],
    [615, 660],
  ])("a zip of at least %d mm is bought as %d mm", (needed, bought) => {
    expect(nextStockLength(needed, sold)).toBe(bought);
  });

  test("a zip longer than any sold is not found", () => {
    expect(nextStockLength(761, sold)).toBeNull();
    expect(nextStockLength(10, [])).toBeNull();
  });

  test.each(zips.rows)(
    "the guide's %d cm is its %d in, to the half centimetre",
    (centimetres, inches) => {
      expect(Math.abs((centimetres ?? 0) - (inches ?? 0) * 2.54)).toBeLessThanOrEqual(0.5);
    },
  );
});

describe("batting blanks", () => {
  // Foam Factory, http://thefoamfactory.com/seatcushion/diy_fiberfill_staple.html
  test.each([
    [{ width: 24, depth: 24, thickness: 4 }, [30, 58]],
    [{ width: 30, depth: 24, thickness: 6 }, [38, 62]],
  ])("the blank for %o is the published one", (inches, published) => {
    const foam = {
      width: inches.width * 25.4,
      depth: inches.depth * 25.4,
      thickness: inches.thickness * 25.4,
    };
    expect(wrapBlank(foam).map((length) => Number((length / 25.4).toFixed(9)))).toEqual(published);
  });
});

describe("box cushions by the trade's rule", () => {
  test.each(cushions)(
    "$name ($source)",
    ({ foam, seamAllowance, plate, boxingWidth, boxingLength }) => {
      const [width = 0, depth = 0, thickness = 0] = foam;
      const cushion = boxCushion({ width, depth, thickness }, seamAllowance);
      expect(cushion.plate[0]).toBeCloseTo(plate[0] ?? 0, 9);
      expect(cushion.plate[1]).toBeCloseTo(plate[1] ?? 0, 9);
      expect(cushion.boxing[1]).toBeCloseTo(boxingWidth, 9);
      if (boxingLength !== null) expect(cushion.boxing[0]).toBeCloseTo(boxingLength, 9);
    },
  );

  // http://www.sewgirls.com/sewing/order-of-sewing-box-cushion-32410-.htm: 48 − 16 + 4 allowances
  test("with 16 in zip strips the plain strip of the 12 in cushion is 34 in", () => {
    const around = boxCushion({ width: 12, depth: 12, thickness: 3 }, 0.5).boxing[0] - 2 * 0.5;
    expect(around).toBe(48);
    expect(around - 16 + 4 * 0.5).toBe(34);
  });
});

describe("strips, coverage and finish", () => {
  // http://www.cornicekits.com/fabric_requirements.htm works with unrounded widths: 3.09 × 12 in = 1.03 yd
  test("a 167 in strip on 54 in cloth needs no less than the published 1.03 yd", () => {
    const { clothLength, strips } = straightStrips(167, 12, { width: 54, join: 0 });
    expect(strips).toBe(Math.ceil(167 / 54));
    expect(clothLength / 36).toBeGreaterThanOrEqual(1.03);
  });

  // Mulco, http://www.mulco.ca/En/Tips/Tips_03b_calculating_adhesives.htm
  test("3.78 litres at 19 ft² a litre cover 71.8 ft²", () => {
    expect(containerCoverage(3.78, 19)).toBeCloseTo(71.8, 1);
    expect(containersFor(72, containerCoverage(3.78, 19))).toBe(2);
    expect(containersFor(72, 0)).toBeNull();
  });

  // HomeSteady, area of a 24 × 24 × 6 in cushion: 12 ft²,
  // https://homesteady.com/how-12092649-calculate-fabric-yardage-sofa-cushions.html
  test("a 24 × 24 × 6 in block has 12 ft² of surface", () => {
    expect(finishArea([24, 24], 6) / 144).toBe(12);
  });
});
