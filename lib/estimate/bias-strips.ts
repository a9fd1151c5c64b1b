import type { Count, Mm, Mm2, Ratio } from "../plane/types.ts";

/** Side to diagonal of a square: what a 45° strip gains on the straight grain. */
const diagonal: Ratio = Math.SQRT2;

/**
 * The most bias strip a square can give: its area over the strip's width. No real square gives it
 * all, for joins and half strips are lost.
 *
 * @source "Bias tape", http://www.sewaquilt.com/bias-tape.html
 */
export function biasUpperBound(square: Mm, width: Mm): Mm {
  return square ** 2 / width;
}

/**
 * Side of the smallest square whose area makes the strip, before joins.
 *
 * @source "How do I calculate how much fabric I need for bias binding?",
 * https://www.quiltersquestiontime.com/blog/how-do-i-calculate-how-much-fabric-i-need-for-bias-binding
 */
export function biasSquare(length: Mm, width: Mm): Mm {
  return Math.sqrt(length * width);
}

/**
 * Length along the selvedge that a bias strip of the given width takes up.
 *
 * @source clothing-design handbook, ch. XXII, strip table, https://chestofbooks.com/business/clothing/
 */
export function widthAlongSelvedge(width: Mm): Mm {
  return width * diagonal;
}

/**
 * Whole strips and joined length from one square sewn into a tube and cut round and round.
 * One join of `seam` is lost from both sides of the square, and a third at the second join.
 *
 * @source "Bias tape formula conundrum", https://kestrelmichaud.com/blog/2020/bias-tape-forumla-conundrum
 */
export function biasFromSquare(
  square: Mm,
  width: Mm,
  { seam }: { readonly seam: Mm },
): { readonly strips: Count; readonly length: Mm } {
  const strips = Math.max(0, Math.floor((square - 2 * seam) / widthAlongSelvedge(width) + 1e-9));
  return { strips, length: strips * diagonal * Math.max(0, square - 3 * seam) };
}

/**
 * The square that gives a wanted length in whole strips only.
 *
 * @source "Continuous bias tape magic formula",
 * http://thebuttonship.blogspot.com/2014/09/continuous-bias-tape-magic-formula.html
 */
export function squareForWholeStrips(
  length: Mm,
  width: Mm,
  { seam }: { readonly seam: Mm },
): { readonly strips: Count; readonly square: Mm } {
  const strips = Math.ceil(Math.sqrt(length / (2 * width)) - 1e-9);
  return { strips, square: strips * widthAlongSelvedge(width) + 2 * seam };
}

/** Corner triangles that are too short to be worth a join: a square on the leg of the shortest piece. */
function lostInCorners(shortest: Mm): Mm2 {
  return (shortest / diagonal) ** 2;
}

/**
 * Length of cloth, over its whole width, for a joined bias strip when pieces shorter than
 * `shortest` are thrown away.
 *
 * @source NIMI, Dress Making Trade Practical, vol. 2, p. 220, http://nimi.co.in/cits_ebooks/Dress_Making/
 */
export function clothForBias(
  length: Mm,
  width: Mm,
  cloth: { readonly width: Mm; readonly shortest: Mm },
): Mm {
  return (length * width + lostInCorners(cloth.shortest)) / cloth.width;
}

/** Joined bias strip a piece of cloth gives; the other way round from `clothForBias`. */
export function biasFromCloth(
  size: readonly [Mm, Mm],
  width: Mm,
  { shortest }: { readonly shortest: Mm },
): Mm {
  return Math.max(0, (size[0] * size[1] - lostInCorners(shortest)) / width);
}
