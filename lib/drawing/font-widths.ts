/**
 * Advance widths in thousandths of the type size, U+0020 to U+007E in order.
 *
 * @source Source Sans 3, `hmtx` table of the regular (400) and semibold (600) faces in the npm
 * package @fontsource/source-sans-3; the test reads the font again and compares
 */
export const asciiWidths: Readonly<Record<"regular" | "semibold", readonly number[]>> = {
  // prettier-ignore
  regular: [200,289,426,497,497,824,609,249,303,303,418,497,249,311,249,350,497,497,497,497,497,497,497,497,497,497,249,249,497,497,497,425,847,543,588,571,615,527,494,617,652,263,479,579,486,727,647,664,566,664,569,534,536,645,515,786,513,476,539,303,350,303,497,500,542,504,553,456,555,496,292,504,544,246,247,495,255,829,547,542,555,555,347,419,338,544,467,719,446,467,425,303,241,303,497],
  // prettier-ignore
  semibold: [200,315,482,513,513,841,639,275,324,324,438,513,275,322,275,344,513,513,513,513,513,513,513,513,513,513,275,275,513,513,513,444,875,558,597,576,625,538,510,628,663,282,494,597,502,745,657,674,582,674,592,545,546,655,536,800,541,501,540,324,344,324,513,500,549,516,563,462,564,507,317,520,558,262,263,522,271,843,560,549,564,564,373,431,361,556,495,748,481,495,443,324,255,324,513],
};

/** Widths beyond ASCII that figures use: regular, semibold. Same source. */
export const otherWidths: Readonly<Record<string, readonly [number, number]>> = {
  "×": [497, 513],
  "⁄": [86, 91],
  "–": [480, 480],
  "′": [249, 275],
  "″": [426, 482],
  "°": [331, 348],
  "·": [249, 275],
  "−": [497, 513],
};

/** A digit set by the font's `frac` feature. Same source, `1⁄2` shaped with `frac`. */
export const fractionDigitWidth: readonly [number, number] = [367, 372];

/** A letter the table lacks is taken to be as wide as the widest common capital. */
export const unknownWidth = 800;
