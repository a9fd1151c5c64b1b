import type { Mm, Point } from "../plane/types.ts";

/** Something that takes an upright rectangle of a sheet. */
export interface Nestling {
  readonly id: string;
  readonly size: readonly [width: Mm, height: Mm];
}

/** Where one lies on its sheet: lower left corner from the lower left of the live part, y up. */
export interface Nested {
  readonly id: string;
  readonly at: Point;
  readonly isTurned: boolean;
}

interface Space {
  readonly at: Point;
  readonly size: readonly [Mm, Mm];
}

/** White between two pieces on one sheet. @source our choice: room for scissors and a letter */
export const nestGap: Mm = 6;

type Rule = (fit: Fit) => readonly number[];

interface Fit {
  readonly at: Point;
  readonly isTurned: boolean;
  /** Room left over beside it and above it. */
  readonly spare: readonly [Mm, Mm];
}

/** What makes a place the better one: the first number that is less. */
const rules: readonly Rule[] = [
  ({ spare }) => [Math.min(...spare)],
  ({ spare }) => [Math.max(...spare)],
  ({ at, isTurned }) => [at[1], at[0], isTurned ? 1 : 0],
  ({ at, isTurned }) => [isTurned ? 1 : 0, at[1], at[0]],
];

/**
 * Put rectangles on few sheets: the largest first, each in the best empty place there is, turned by a
 * quarter where that is better; of four rules for the best place, the one that takes the fewest sheets.
 * What fits on no sheet is left out.
 *
 * @source Jylänki 2010, "A thousand ways to pack the bin": maximal rectangles
 */
export function nestOnSheets(
  nestlings: readonly Nestling[],
  room: readonly [Mm, Mm],
): readonly (readonly Nested[])[] {
  const tried = rules.map((rule) => nestBy(rule, nestlings, room));
  return tried.reduce((best, each) => (each.length < best.length ? each : best));
}

function nestBy(
  rule: Rule,
  nestlings: readonly Nestling[],
  [width, height]: readonly [Mm, Mm],
): readonly (readonly Nested[])[] {
  const sheets: { nested: Nested[]; free: readonly Space[] }[] = [];
  // The gap is added to every piece, and once to the sheet, so that it lies only between pieces.
  const whole: Space = { at: [0, 0], size: [width + nestGap, height + nestGap] };
  const order = [...nestlings].sort(
    (a, b) => Math.max(...b.size) - Math.max(...a.size) || area(b) - area(a),
  );
  for (const { id, size } of order) {
    const taken: readonly [Mm, Mm] = [size[0] + nestGap, size[1] + nestGap];
    const begun = sheets
      .map((sheet) => ({ sheet, fit: bestFit(sheet.free, taken, rule) }))
      .find(({ fit }) => fit !== null);
    const fit = begun?.fit ?? bestFit([whole], taken, rule);
    if (fit === null) continue;
    const sheet = begun?.sheet ?? { nested: [], free: [whole] };
    if (begun === undefined) sheets.push(sheet);
    const { at, isTurned } = fit;
    sheet.nested.push({ id, at, isTurned });
    sheet.free = cutAway(sheet.free, { at, size: isTurned ? [taken[1], taken[0]] : taken });
  }
  return sheets.map(({ nested }) => nested);
}

const area = ({ size }: Nestling): number => size[0] * size[1];

function bestFit(
  free: readonly Space[],
  [width, height]: readonly [Mm, Mm],
  rule: Rule,
): Fit | null {
  const fits = free.flatMap(({ at, size }) =>
    [false, true].flatMap((isTurned): readonly Fit[] => {
      const [w, h] = isTurned ? [height, width] : [width, height];
      const spare = [size[0] - w, size[1] - h] as const;
      return Math.min(...spare) < -1e-9 ? [] : [{ at, isTurned, spare }];
    }),
  );
  return fits.reduce<Fit | null>(
    (best, each) => (best === null || isLess(rule(each), rule(best)) ? each : best),
    null,
  );
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const first = a.findIndex((value, i) => Math.abs(value - b[i]!) > 1e-9);
  return first >= 0 && a[first]! < b[first]!;
}

/** What is left of each empty place round a rectangle, those inside another left out. */
function cutAway(free: readonly Space[], taken: Space): readonly Space[] {
  const left = free.flatMap((space) => without(space, taken));
  return left.filter(
    (space, i) =>
      !left.some(
        (other, j) => j !== i && isInside(space, other) && (!isInside(other, space) || j < i),
      ),
  );
}

function without(space: Space, taken: Space): readonly Space[] {
  const [x, y] = space.at;
  const [right, high] = [x + space.size[0], y + space.size[1]];
  const [tx, ty] = taken.at;
  const [tRight, tHigh] = [tx + taken.size[0], ty + taken.size[1]];
  if (tx >= right || tRight <= x || ty >= high || tHigh <= y) return [space];
  const parts: readonly Space[] = [
    { at: [x, y], size: [tx - x, high - y] },
    { at: [tRight, y], size: [right - tRight, high - y] },
    { at: [x, y], size: [right - x, ty - y] },
    { at: [x, tHigh], size: [right - x, high - tHigh] },
  ];
  return parts.filter(({ size }) => Math.min(...size) > 1e-9);
}

const isInside = (a: Space, b: Space): boolean =>
  [0, 1].every(
    (i) => a.at[i]! >= b.at[i]! - 1e-9 && a.at[i]! + a.size[i]! <= b.at[i]! + b.size[i]! + 1e-9,
  );
