import { z } from "zod";
import type { BoardSet, LaySet, SheetSet } from "../packing/bench-types.ts";

const size = z.number().positive();
const count = z.int().nonnegative();
const pair = z.tuple([z.number(), z.number()]);
/** Whole numbers only, and few enough that a table of all sizes stays small. */
const side = z.int().positive().max(20_000);
const sides = z.tuple([side, side]);

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
export const sheetSetShape: z.ZodType<SheetSet> = z.object({
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
}) as z.ZodType<SheetSet>;

/** Lengths to cut from boards, in whole numbers. */
export const boardSetShape: z.ZodType<BoardSet> = z
  .object({
    name: z.string(),
    capacity: z.int().positive(),
    sizes: z.array(z.int().positive()).min(1),
    demand: z.array(z.int().positive()),
    lowerBound: count.exactOptional(),
    bestFound: count.exactOptional(),
    proven: z.boolean().exactOptional(),
  })
  .refine((set) => set.sizes.length === set.demand.length, "needs as many demands as sizes")
  .refine((set) => set.sizes.every((each) => each <= set.capacity), "has a size over the capacity")
  .transform(mergeSizes);

/** A size that is listed twice counts once, with both demands. */
function mergeSizes(set: BoardSet): BoardSet {
  const sizes = [...new Set(set.sizes)];
  const demand = sizes.map((size) =>
    set.demand.reduce((sum, each, i) => (set.sizes[i] === size ? sum + each : sum), 0),
  );
  return { ...set, sizes, demand };
}

/** A file may say in words that any number is wanted. */
function numberOrNone(value: unknown): unknown {
  return typeof value === "number" ? value : undefined;
}
