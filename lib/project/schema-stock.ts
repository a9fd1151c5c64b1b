import { z } from "zod";
import * as part from "./schema-parts.ts";
import { fibres } from "./stock-types.ts";
import { tell } from "./tell.ts";

const label = part.text.meta({ description: "Words for it in print, instead of its name" });
const have = part.wholeNumber.meta({ description: "How many are on hand" });
const kerf = part.length.meta({ description: "Width of the saw cut, 0 for a knife" });
const amount = (example: string) =>
  z.union([z.string(), z.number()], tell(example, "Write the number and its unit"));

const slab = part.record(
  {
    kind: z.literal("slab"),
    label: label.optional(),
    size: part.threeLengths.meta({ description: "Length, width, thickness" }),
    have: have.optional(),
    density: amount("a density such as 35 kg/m3").optional(),
    hardness: amount("a hardness such as 150 N or 35 lb").optional(),
    kerf: kerf.optional(),
    reclaimed: part.yesOrNo
      .meta({ description: "true for old foam out of other furniture" })
      .optional(),
    price: part.price.optional(),
  },
  "a slab with its size",
  "Write {kind: slab, size: [200, 60, 8]}",
);

const fabric = part.record(
  {
    kind: z.literal("fabric"),
    label: label.optional(),
    width: part.length.meta({ description: "Full width, selvedges included" }),
    selvedge: part.length.meta({ description: "Width of one selvedge" }).optional(),
    direction: part
      .oneOf(["one-way", "two-way", "any"])
      .meta({ description: "Ways the print or nap may run" })
      .optional(),
    repeat: part
      .record(
        { along: part.length, across: part.length },
        "the repeat of the pattern",
        "Write {along: 32, across: 23}",
      )
      .meta({ description: "Distance from one motif to the next, along and across the cloth" })
      .optional(),
    have: part.length.meta({ description: "Length on hand" }).optional(),
    shrink: amount("a percentage such as 3 %")
      .meta({ description: "Share lost in the first wash, such as 3 %" })
      .optional(),
    price: part.price.optional(),
    twoFaced: part.yesOrNo
      .meta({ description: "true when both sides are good, so that a piece may be turned over" })
      .optional(),
    thickness: part.length.meta({ description: "Thickness of one layer" }).optional(),
    weight: amount("a weight such as 280 g/m2")
      .meta({
        description: "Weight of the cloth, such as 280 g/m2: chooses stitch, needle, thread",
      })
      .optional(),
    fibre: part
      .oneOf(fibres)
      .meta({ description: "What the cloth is made of, or its most sensitive fibre: chooses care" })
      .optional(),
  },
  "a fabric with its width",
  "Write {kind: fabric, width: 140}",
);

const sheet = part.record(
  {
    kind: z.literal("sheet"),
    label: label.optional(),
    size: part.twoLengths.meta({ description: "Length, width" }),
    thickness: part.length,
    kerf: kerf.optional(),
    grain: part.oneOf(["along", "across", "none"]).optional(),
    have: have.optional(),
    price: part.price.optional(),
  },
  "a sheet with its size and thickness",
  "Write {kind: sheet, size: [122, 61], thickness: 12 mm}",
);

const board = part.record(
  {
    kind: z.literal("board"),
    label: label.optional(),
    section: part.twoLengths.meta({ description: "Width and thickness of the board" }),
    length: part.length.meta({ description: "Length it is sold in" }),
    kerf: kerf.optional(),
    have: have.optional(),
    price: part.price.optional(),
  },
  "a board with its section and length",
  "Write {kind: board, section: [34 mm, 19 mm], length: 240}",
);

const zip = part.record(
  {
    kind: z.literal("zip"),
    label: label.optional(),
    lengths: z
      .array(part.length, tell("a list of lengths", "Write [40, 60, 80]"))
      .meta({ description: "Lengths sold; leave it out for chain by the metre" })
      .optional(),
    have: z
      .array(part.length, tell("a list of lengths", "Write [60]"))
      .meta({ description: "Lengths on hand" })
      .optional(),
    price: part.price.optional(),
  },
  "a zip",
  "Write {kind: zip, lengths: [40, 60, 80]}",
);

const kinds = "slab, fabric, sheet, board, zip";

export const stock = part
  .named(
    z.discriminatedUnion(
      "kind",
      [slab, fabric, sheet, board, zip],
      tell(`one of ${kinds}`, `Write kind: and one of ${kinds}`),
    ),
    "stock by name",
  )
  .meta({ description: "What things are cut from, each under a name of your own" });
