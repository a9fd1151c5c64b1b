import { describe, expect, test } from "vitest";
import { box, cylinder, inch, inches } from "../fixtures/blocks.ts";
import { cutInches, listPanels, makeCover, pieceNamed } from "../fixtures/make-cover.ts";

const sides = ["front", "right", "back", "left"].map((side) => `pad/${side}`);
const plates = listPanels(["pad/top"], ["pad/underside"]);
const allApart = [...plates, ...sides.flatMap((side) => listPanels([side]))];
const boxing = [...plates, { name: "boxing", faces: sides }];

/** A sixty-fourth of an inch: printed cut sizes are whole eighths. */
const within = 1 / 64;
const about = (wanted: number) => expect.closeTo(wanted, 9) as number;
const expectCut = (cut: readonly number[], wanted: readonly number[]) => {
  expect(cut.length).toBe(wanted.length);
  cut.forEach((size, i) => {
    expect(Math.abs(size - wanted.toSorted((a, b) => a - b)[i]!)).toBeLessThan(within);
  });
};

describe("a box cushion cut apart", () => {
  // Instructables Q&A, "Calculating yardage, bench cushions":
  // http://www.instructables.com/answers/calculating-yardage-bench-cushions/
  const bench = [
    { panel: "pad/top", cut: [33 + 7 / 8, 15 + 7 / 8] },
    { panel: "pad/underside", cut: [33 + 7 / 8, 15 + 7 / 8] },
    { panel: "pad/front", cut: [33 + 7 / 8, 4 + 1 / 4] },
    { panel: "pad/left", cut: [15 + 7 / 8, 4 + 1 / 4] },
    { panel: "pad/right", cut: [15 + 7 / 8, 4 + 1 / 4] },
  ];
  const { cover } = makeCover([box("pad", inches(32 + 5 / 8, 14 + 5 / 8, 3))], {
    panels: allApart,
    seamAllowance: (5 / 8) * inch,
  });

  test.each(bench)("has its $panel cut $cut in, as the worked bench cushion", ({ panel, cut }) => {
    expectCut(cutInches(pieceNamed(cover, panel)), cut);
  });

  // eHow, "How to calculate fabric for an ottoman", a rule of one inch for each measure:
  // http://www.ehow.com/how_12117142_calculate-fabric-ottoman.html
  test("sums to the strips of the worked ottoman: 63 in with its top, 32 in without", () => {
    const ottoman = makeCover([box("pad", inches(30, 30, 15))], { panels: allApart }).cover;
    const [side] = cutInches(pieceNamed(ottoman, "pad/front"));
    const [top] = cutInches(pieceNamed(ottoman, "pad/top"));
    expect(top! + 2 * side!).toBeCloseTo(63, 9);
    expect(2 * side!).toBeCloseTo(32, 9);
  });
});

describe("a box cushion with its boxing in one strip", () => {
  // Creativebug, "Make a box cushion cover": plates are the foam and 1 in, boxing is 2 W + 2 L + 1 in
  // by T + 1 in, half-inch seams. http://crafts.creativebug.com/make-box-cushion-cover-1726.html
  test.each([
    [20, 18, 3],
    [24, 24, 4],
    [36, 15.5, 2.5],
  ])("of %d × %d × %d in follows the published rule", (width, depth, thick) => {
    const { cover } = makeCover([box("pad", inches(width, depth, thick))], { panels: boxing });
    expectCut(cutInches(pieceNamed(cover, "pad/top")), [width + 1, depth + 1]);
    expectCut(cutInches(pieceNamed(cover, "boxing")), [2 * width + 2 * depth + 1, thick + 1]);
  });

  // eHow UK, "Reupholster chair cushions": foam 11 × 15 × 3 in, half-inch seams.
  // http://www.ehow.co.uk/video_5112747_reupholster-chair-cushions.html
  test("of 11 × 15 × 3 in has a plate 12 in wide and boxing of 4 in", () => {
    const { cover } = makeCover([box("pad", inches(11, 15, 3))], { panels: boxing });
    expect(cutInches(pieceNamed(cover, "pad/top"))[0]).toBeCloseTo(12, 9);
    expect(cutInches(pieceNamed(cover, "boxing"))[0]).toBeCloseTo(4, 9);
  });

  // Sew Girls, "Order of sewing: box cushion", 12 in square.
  // http://www.sewgirls.com/sewing/order-of-sewing-box-cushion-32410-.htm
  test("of 12 in square has 13 in plates and 48 in of seam round each", () => {
    const { cover } = makeCover([box("pad", inches(12, 12, 2))], { panels: boxing });
    expectCut(cutInches(pieceNamed(cover, "pad/top")), [13, 13]);
    const top = pieceNamed(cover, "pad/top");
    const round = cover.seams.filter(({ panels }) => panels.includes(top.id));
    expect(round.reduce((sum, { length }) => sum + length[0], 0) / inch).toBeCloseTo(48, 9);
  });

  // Cushion Works, flat-front bench cushion: 2 1/2 in foam in 2 1/2 in finished boxing; the batting lies on top and
  // underneath only and makes the crown. https://cushionworks.blogspot.com/2011/09/
  test("with a flat front has boxing that finishes as thick as its foam", () => {
    const { cover } = makeCover([box("pad", inches(48, 18, 2.5))], { panels: boxing });
    const ends = pieceNamed(cover, "boxing").edges.filter(({ length }) => length < 10 * inch);
    expect(ends.map(({ length }) => length / inch)).toEqual([2.5, 2.5].map(about));
    expectCut(cutInches(pieceNamed(cover, "boxing")), [2 * (48 + 18) + 1, 3.5]);
  });

  // Webcasty, "How to make cushions": cut the cloth to the size of the foam, sew half-inch seams, and
  // the cover comes out 1 in smaller. https://webcasty.com/2013/how-to-make-cushions/
  test("fitted an inch smaller is cut to the size of the foam", () => {
    const { cover, fitted } = makeCover([box("pad", inches(20, 16, 2))], {
      panels: boxing,
      ease: inches(-1, -1, 0),
    });
    expectCut(cutInches(pieceNamed(cover, "pad/top")), [20, 16]);
    expect(fitted.size[0] / inch).toBeCloseTo(19, 9);
    expect(fitted.size[1] / inch).toBeCloseTo(15, 9);
  });
});

describe("round cushions", () => {
  // The Spruce, "Sew a round bolster pillow": 9 in across and 14 in long, half-inch seams.
  // https://www.thespruce.com/sew-a-round-bolster-pillow-2977940 (it reckons with 3.14: 29 1/4 in)
  test("a bolster has 10 in ends and a body of 15 by 29 1/4 in", () => {
    const { cover } = makeCover([cylinder("roll", 9 * inch, 14 * inch, "x")], {
      panels: listPanels(["roll/around"], ["roll/left"], ["roll/right"]),
    });
    expectCut(cutInches(pieceNamed(cover, "roll/left")), [10, 10]);
    expectCut(cutInches(pieceNamed(cover, "roll/right")), [10, 10]);
    const [narrow, wide] = cutInches(pieceNamed(cover, "roll/around"));
    expect(narrow).toBeCloseTo(15, 9);
    expect(wide).toBeCloseTo(9 * Math.PI + 1, 9);
    expect(Math.abs(wide! - 29.25)).toBeLessThan(0.03);
  });

  // Don Casey, Sailboat canvas handbook, International Marine / McGraw-Hill, ISBN 0-07-013391-3,
  // bull-nosed cushions: main piece = top + front + bottom wrap + 1 in; side both measures + 1 in.
  test("a bull-nosed cushion is the same as one block with its front edges rounded", () => {
    const [width, depth, thick] = [22, 20, 4];
    const nosed = {
      kind: "rounded",
      id: "pad",
      at: [0, 0, 0],
      foam: null,
      size: inches(width, depth, thick),
      radius: (thick / 2) * inch,
      along: "x",
      corners: ["front-left", "back-left"],
    } as const;
    const { cover, foam } = makeCover([nosed], {
      panels: listPanels(["pad/top", "pad/around", "pad/underside"], ["pad/left"], ["pad/right"]),
    });
    const wrap = 2 * (depth - thick / 2) + (Math.PI * thick) / 2;
    expectCut(cutInches(pieceNamed(cover, "pad/top")), [width + 1, wrap + 1]);
    expectCut(cutInches(pieceNamed(cover, "pad/left")), [depth + 1, thick + 1]);
    // Half a disc in the place of a square of foam at the nose.
    const side = depth * thick - (thick * thick) / 2 + (Math.PI * thick * thick) / 8;
    expect(foam.volume / inch ** 3).toBeCloseTo(width * side, 6);
  });

  test("a bull-nosed cushion has one main piece round its nose", () => {
    const [width, depth, thick] = [22, 20, 4];
    const { cover } = makeCover(
      [
        box("pad", inches(width, depth - thick / 2, thick), inches(0, thick / 2, 0)),
        cylinder("nose", thick * inch, width * inch, "x"),
      ],
      {
        panels: listPanels(
          ["pad/top", "nose/around", "pad/underside"],
          ["pad/left"],
          ["pad/right"],
        ),
      },
    );
    const wrap = 2 * (depth - thick / 2) + (Math.PI * thick) / 2;
    expectCut(cutInches(pieceNamed(cover, "pad/top")), [width + 1, wrap + 1]);
    expectCut(cutInches(pieceNamed(cover, "pad/left")), [depth + 1, thick + 1]);
    expectCut(cutInches(pieceNamed(cover, "pad/right")), [depth + 1, thick + 1]);
  });
});
