import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  biasFromCloth,
  biasFromSquare,
  biasSquare,
  biasUpperBound,
  clothForBias,
  squareForWholeStrips,
  widthAlongSelvedge,
} from "../../lib/estimate/bias-strips.ts";
import { pipingStripWidth } from "../../lib/seams/piping-strip-width.ts";
import { straightStrips } from "../../lib/estimate/straight-strips.ts";
import table from "../../shared/tables/bias-widths.json" with { type: "json" };

const upperBounds = [
  {
    square: 12,
    width: 2,
    length: 72,
    source: "Bias tape, http://www.sewaquilt.com/bias-tape.html",
  },
  {
    square: 20,
    width: 2,
    length: 200,
    source: "My Decozo, making continuous piping strips, https://www.mydecozo.co.uk/forum/",
  },
  {
    square: 36,
    width: 2,
    length: 18 * 36,
    source: "Marian Lewis, http://sew-whats-new.com/profiles/blogs/how-much-bias-binding-can-you",
  },
];

const squares = [
  { length: 250, width: 2, side: 23, source: "My Decozo, as above" },
  {
    length: 100,
    width: 3.5,
    side: 19,
    source:
      "https://www.quiltersquestiontime.com/blog/how-do-i-calculate-how-much-fabric-i-need-for-bias-binding",
  },
];

describe("bias strips", () => {
  test.each(upperBounds)(
    "a $square in square gives at most $length in ($source)",
    ({ square, width, length }) => {
      expect(biasUpperBound(square, width)).toBeCloseTo(length, 9);
    },
  );

  test.each(squares)(
    "$length in at $width in need a square of $side in ($source)",
    ({ length, width, side }) => {
      expect(Math.ceil(biasSquare(length, width))).toBe(side);
    },
  );

  // Marian Lewis, as above: eight placemats 18 × 12 in, 2 in of overlap each
  test("the square for eight bound placemats, 496 in at 2 in, gives that much", () => {
    expect(biasUpperBound(Math.ceil(biasSquare(496, 2)), 2)).toBeGreaterThanOrEqual(496);
  });

  // http://thebuttonship.blogspot.com/2014/09/continuous-bias-tape-magic-formula.html
  test("98 in at 1 in in whole strips: 7 strips from a square of 10.40 in", () => {
    const { strips, square } = squareForWholeStrips(98, 1, { seam: 0.25 });
    expect(strips).toBe(7);
    expect(square).toBeCloseTo(10.4, 2);
  });

  // https://kestrelmichaud.com/blog/2020/bias-tape-forumla-conundrum
  test("a 10 1/2 in square gives 7 whole strips, 96 1/2 in and not the 100 in the area promises", () => {
    const { strips, length } = biasFromSquare(10.5, 1, { seam: 0.25 });
    expect(strips).toBe(7);
    expect(length).toBeCloseTo(96.52, 2);
  });

  // https://forum.upholster.com/index.php?action=printpage&topic=10184.0
  test("950 in of 1 1/2 in strip on 54 in cloth are 18 strips, 27 in of cloth", () => {
    const { strips, clothLength } = straightStrips(950, 1.5, { width: 54, join: 0 });
    expect(strips).toBe(18);
    expect(clothLength).toBe(27);
    // Same page: the longest 45° strip on 54 in cloth is 76 in, cut down from 76.37.
    expect(Math.floor(widthAlongSelvedge(54))).toBe(76);
  });

  // NIMI, Dress Making Trade Practical, vol. 2, p. 220, http://nimi.co.in/cits_ebooks/Dress_Making/
  // The book takes √2 as 1.4, which moves the corner triangles by 0.4 cm².
  test("500 cm at 2.5 cm on 86 cm cloth take 15.12 cm, with no piece under 10 cm", () => {
    expect(clothForBias(500, 2.5, { width: 86, shortest: 10 })).toBeCloseTo(15.12, 2);
  });

  test("96 × 20 cm of cloth gives 934.79 cm at 2 cm", () => {
    expect(Math.abs(biasFromCloth([96, 20], 2, { shortest: 10 }) - 934.79)).toBeLessThan(0.25);
  });

  test("a lateral side of 62.86 cm is a strip of 88 cm, within one per cent", () => {
    expect(widthAlongSelvedge(62.86) / 88).toBeGreaterThan(0.99);
    expect(widthAlongSelvedge(62.86) / 88).toBeLessThan(1.011);
  });

  // "Piped bias edge", Scribd 510430004
  test("46 of bias take 32.53 along the straight grain", () => {
    expect(46 / widthAlongSelvedge(1)).toBeCloseTo(32.53, 2);
  });

  // The handbook named in the table; entries are in eighths, so half an eighth and its rounding.
  test.each(table.rows)(
    "a strip %d in wide takes %d in and %d eighths along the selvedge",
    (width, whole, eighths) => {
      expect(
        Math.abs(widthAlongSelvedge(width ?? 0) - (whole ?? 0) - (eighths ?? 0) / 8),
      ).toBeLessThan(0.125);
    },
  );

  test("whole strips never give more than the area promises", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        (square, width) => {
          expect(biasFromSquare(square, width, { seam: 0.25 }).length).toBeLessThanOrEqual(
            biasUpperBound(square, width),
          );
        },
      ),
    );
  });
});

describe("the strip that wraps a piping cord", () => {
  // Upholstery Resource, https://www.upholsteryresource.com/node/103?page=9
  test("5/32 in cord takes a 1 1/2 in strip with half-inch seams", () => {
    expect(Math.round(pipingStripWidth(5 / 32, 0.5) * 8) / 8).toBe(1.5);
  });

  // https://sewmesomethingcourses.com/courses/how-to-sew-piping/how-to-sew-corded-piping/ rounds 3 d up to 4.5 cm
  test("4 mm cord with 15 mm seams takes between 4.2 and 4.5 cm", () => {
    expect(pipingStripWidth(4, 15)).toBeGreaterThanOrEqual(42);
    expect(pipingStripWidth(4, 15)).toBeLessThanOrEqual(45);
  });

  // The Sewing Loft, https://thesewingloftblog.com/?p=13974: π d and 1 to 1 1/2 in
  test("a quarter inch cord with half-inch seams lies in the published band", () => {
    expect(pipingStripWidth(0.25, 0.5)).toBeGreaterThanOrEqual(Math.PI / 4 + 1);
    expect(pipingStripWidth(0.25, 0.5)).toBeLessThanOrEqual(Math.PI / 4 + 1.5);
  });
});
