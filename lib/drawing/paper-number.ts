/**
 * Write a paper length to the nearest 0.01 mm, without trailing zeros and never as "-0".
 *
 * @source our choice: finer than any printer's dot (600 dpi is 0.042 mm)
 */
export function paperNumber(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}
