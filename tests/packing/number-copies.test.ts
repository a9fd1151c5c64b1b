import fc from "fast-check";
import { expect, test } from "vitest";
import { numberCopies } from "../../lib/packing/number-copies.ts";
import type { LayPlace } from "../../lib/packing/types.ts";

const at = (piece: string, x: number, y: number, copy = 1): LayPlace => ({
  piece,
  copy,
  x,
  y,
  turn: 0,
  flipped: false,
  outline: [],
});

test("copies are numbered along the cloth, then across it", () => {
  const places = [
    at("flag", 30, 40, 1),
    at("tape", 0, 90, 1),
    at("flag", 60, 0, 2),
    at("flag", 5, 40, 3),
  ];
  expect(numberCopies(places)).toEqual([
    at("flag", 60, 0, 1),
    at("flag", 5, 40, 2),
    at("flag", 30, 40, 3),
    at("tape", 0, 90, 1),
  ]);
});

test("every place stays, and each copy of a piece has a number of its own", () => {
  const place = fc
    .tuple(fc.constantFrom("a", "b", "c"), fc.nat(9), fc.nat(9))
    .map(([piece, x, y]) => at(piece, x, y));
  fc.assert(
    fc.property(fc.array(place, { maxLength: 30 }), (places) => {
      const numbered = numberCopies(places);
      const spots = (all: readonly LayPlace[]) =>
        all.map(({ piece, x, y }) => `${piece} ${x} ${y}`);
      expect(spots(numbered).toSorted()).toEqual(spots(places).toSorted());
      for (const piece of ["a", "b", "c"]) {
        const copies = numbered.filter((each) => each.piece === piece).map(({ copy }) => copy);
        expect(copies).toEqual(copies.map((_, i) => i + 1));
      }
    }),
  );
});
