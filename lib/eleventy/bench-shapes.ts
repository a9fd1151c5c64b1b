import { z } from "zod";
import type { BoardSet, LaySet, SheetSet } from "../packing/bench-types.ts";

const size = z.number().positive();
const count = z.int().nonnegative();
const pair = z.tuple([z.number(), z.number()]);
const sides = z.tuple([size, size]);
/** Cells of a table of all sizes at most, and steps to fill one where numbers are limited. */
const mostCells = 4_000_000;
const mostSteps = 2_000_000_000;

/** Irregular pieces to lay on a strip. */
export const laySetShape: z.ZodType<LaySet> = z.object({
  name: z.string(),
  stripWidth: size,
  items: z
    .array(z.object({ quantity: count, rotations: z.array(z.number()), points: z.array(pair) }))
    .min(1),
  bestKnown: size.exactOptional(),
});

/** Rectangles of some value to cut right across from one sheet. */
export const sheetSetShape: z.ZodType<SheetSet> = z
  .object({
    name: z.string(),
    sheet: sides,
    items: z
      .array(
        z.object({
          size: sides,
          value: z.number().nonnegative(),
          demand: z.preprocess(numberOrNone, count.optional()),
        }),
      )
      .min(1),
    optimum: size.exactOptional(),
  })
  .transform(wholeSheet)
  .refine(isTabled, "has sizes too fine for so large a sheet") as unknown as z.ZodType<SheetSet>;

/** Lengths to cut from boards, in whole numbers. */
export const boardSetShape: z.ZodType<BoardSet> = z
  .object({
    name: z.string(),
    capacity: size,
    sizes: z.array(size).min(1),
    demand: z.array(count),
    lowerBound: count.exactOptional(),
    bestFound: count.exactOptional(),
    proven: z.boolean().exactOptional(),
  })
  .refine((set) => set.sizes.length === set.demand.length, "needs as many demands as sizes")
  .refine((set) => set.sizes.every((each) => each <= set.capacity), "has a size over the capacity")
  .transform(mergeSizes);

/** A size that is listed twice counts once, with both demands; one that is not wanted not at all. */
function mergeSizes(set: BoardSet): BoardSet {
  const demandOf = (size: number): number =>
    set.demand.reduce((sum, each, i) => (set.sizes[i] === size ? sum + each : sum), 0);
  const sizes = [...new Set(set.sizes)].filter((size) => demandOf(size) > 0);
  const [capacity = 1, ...whole] = toWhole([set.capacity, ...sizes]);
  return { ...set, capacity, sizes: whole, demand: sizes.map(demandOf) };
}

/** Lengths and widths in whole units, each way by itself. */
function wholeSheet<T extends { sheet: [number, number]; items: { size: [number, number] }[] }>(
  set: T,
): T {
  const ways = ([0, 1] as const).map((axis) =>
    toWhole([set.sheet[axis], ...set.items.map((item) => item.size[axis])]),
  ) as [number[], number[]];
  const at = (i: number): [number, number] => [ways[0][i]!, ways[1][i]!];
  return {
    ...set,
    sheet: at(0),
    items: set.items.map((item, i) => ({ ...item, size: at(i + 1) })),
  };
}

/** Whether a table of all sizes up to the sheet's can be made. */
function isTabled({
  sheet: [x, y],
  items,
}: {
  sheet: [number, number];
  items: { demand?: unknown }[];
}) {
  const isLimited = items.some(({ demand }) => demand !== undefined);
  return (x + 1) * (y + 1) <= mostCells && (!isLimited || x * y * (x + y) <= mostSteps);
}

/** Decimals counted, at most. */
const decimals = 6;

/** Sizes as whole numbers in the same proportion: decimal places made whole, in the largest unit. */
function toWhole(sizes: readonly number[]): number[] {
  const places = sizes.map((each) => {
    for (let n = 0; n < decimals; n++) {
      if (Math.abs(each * 10 ** n - Math.round(each * 10 ** n)) < 1e-9 * 10 ** n) return n;
    }
    return decimals;
  });
  const whole = sizes.map((each) => Math.round(each * 10 ** Math.max(...places)));
  const share = (a: number, b: number): number => (b === 0 ? a : share(b, a % b));
  const unit = Math.max(1, whole.reduce(share, 0));
  return whole.map((each) => each / unit);
}

/** A file may say in words that any number is wanted. */
function numberOrNone(value: unknown): unknown {
  return typeof value === "number" ? value : undefined;
}
