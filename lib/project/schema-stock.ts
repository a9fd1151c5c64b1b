import { z } from "zod";
import * as part from "./schema-parts.ts";
import { fibres } from "./stock-types.ts";
import { tell } from "./tell.ts";

const label = part.text.meta({ description: "Words for it in print, instead of its name" });
const have = part.wholeNumber.meta({ description: "How many are on hand" });
const kerf = part.length.meta({ description: "Width of the saw cut, 0 for a knife" });
const amount = (example: string) =>
  z.union([z.string(), z.number()], tell(example, "Write the number and its unit"));

const leastOffcut = part.length
  .meta({ description: "Smallest side of an offcut worth keeping" })
  .optional();

/** More of the same stock in other sizes. */
const also = <S extends z.core.$ZodLooseShape>(shape: S, example: string) =>
  z
    .array(
      part.record(
        {
          ...shape,
          label: label.optional(),
          have: have.optional(),
          price: part.price.optional(),
          sold: part.yesOrNo
            .meta({
              description: "false for a piece that is on hand and not sold, such as an old one",
            })
            .optional(),
          first: part.yesOrNo
            .meta({
              description: "true to use it up before others on hand; so are pieces not sold",
            })
            .optional(),
        },
        "one more size of the same stock",
        `Write ${example}`,
      ),
      tell("a list of other sizes", `Write [${example}]`),
    )
    .meta({ description: "The same stock in other sizes, on hand or sold" })
    .optional();

const flaws = z
  .array(
    part.record(
      {
        at: part.twoLengths.meta({ description: "Its lower left corner: across, then along" }),
        size: part.twoLengths,
      },
      "a flaw with its place and size",
      "Write {at: [20, 35], size: [5, 5]}",
    ),
    tell("a list of flaws", "Write [{at: [20, 35], size: [5, 5]}]"),
  )
  .meta({ description: "Spoiled places that no piece may lie on" })
  .optional();

const remnant = part.record(
  {
    label: label.optional(),
    length: part.length
      .meta({ description: "Length of one more piece of the full width" })
      .optional(),
    outline: part.corners
      .meta({ description: "Outline of an odd-shaped piece, the print running up" })
      .optional(),
    flaws,
  },
  "one more piece of the cloth",
  "Write {length: 80}, or {outline: [[0,0],[60,0],[50,40]]}",
);

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
    also: also({ size: part.threeLengths }, "{size: [120, 60, 8], have: 1}"),
    leastOffcut,
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
    also: z
      .array(remnant, tell("a list of other pieces of the cloth", "Write [{length: 80}]"))
      .meta({ description: "Other pieces of the same cloth on hand" })
      .optional(),
    flaws,
    mesh: part.length.meta({ description: "Width of the holes, of a net or mesh" }).optional(),
    folded: part.yesOrNo
      .meta({ description: "true to lay the cloth double, folded along its length" })
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
    cutting: part
      .oneOf(["across", "free"])
      .meta({ description: "across: every cut goes right across; free: parts lie anywhere" })
      .optional(),
    have: have.optional(),
    price: part.price.optional(),
    also: also({ size: part.twoLengths }, "{size: [61, 61], have: 1}"),
    leastOffcut,
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
    also: also({ length: part.length }, "{length: 180, price: 3 each}"),
    leastOffcut,
  },
  "a board with its section and length",
  "Write {kind: board, section: [34 mm, 19 mm], length: 240}",
);

const lengthList = (example: string, description: string) =>
  z
    .array(part.length, tell("a list of lengths", `Write ${example}`))
    .meta({ description })
    .optional();

const zip = part.record(
  {
    kind: z.literal("zip"),
    label: label.optional(),
    lengths: lengthList("[40, 60, 80]", "Lengths sold; leave it out for chain by the metre"),
    have: lengthList("[60]", "Lengths on hand"),
    price: part.price.optional(),
  },
  "a zip",
  "Write {kind: zip, lengths: [40, 60, 80]}",
);

const length = part.record(
  {
    kind: z.literal("length"),
    label: label.optional(),
    lengths: lengthList("[200, 500]", "Lengths sold; leave it out for any length off the roll"),
    have: lengthList("[60]", "Lengths on hand"),
    price: part.price.optional(),
  },
  "webbing, cord or tape bought by length",
  "Write {kind: length, lengths: [200, 500]}",
);

const kinds = "slab, fabric, sheet, board, zip, length";

export const stock = part
  .named(
    z.discriminatedUnion(
      "kind",
      [slab, fabric, sheet, board, zip, length],
      tell(`one of ${kinds}`, `Write kind: and one of ${kinds}`),
    ),
    "stock by name",
  )
  .meta({ description: "What things are cut from, each under a name of your own" });
