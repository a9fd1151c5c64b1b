import { z } from "zod";
import * as part from "./schema-parts.ts";
import { solids } from "./schema-solids.ts";
import { stock } from "./schema-stock.ts";
import { tell } from "./tell.ts";

const hem = part
  .record(
    {
      top: part.length.optional(),
      bottom: part.length.optional(),
      left: part.length.optional(),
      right: part.length.optional(),
    },
    "how much is turned in at each side",
    "Write {top: 4, bottom: 4}",
  )
  .meta({ description: "Hems of the sides of cloth where they differ from seamAllowance" });

const hole = z.union(
  [
    part.record(
      { circle: part.length.meta({ description: "Diameter" }), at: part.twoLengths },
      "a round hole",
      "Write {circle: 3, at: [20, 15]}",
    ),
    part.record({ outline: part.corners }, "a hole", "Write {outline: [[5,5],[9,5],[9,9]]}"),
  ],
  tell("a hole: circle and at, or outline", "Write {circle: 3, at: [20, 15]}"),
);

const round = part.record({ circle: part.length }, "a circle", "Write {circle: 30}");

const piece = part.record(
  {
    stock: part.identifier.meta({ description: "Fabric, sheet, board or length it is cut from" }),
    label: part.text.optional(),
    size: part.twoLengths.meta({ description: "Finished width and height" }).optional(),
    outline: z
      .union(
        [part.corners, round],
        tell("a list of corners, or {circle: 30}", "Write [[0,0],[40,0],[40,30]]"),
      )
      .meta({ description: "Finished outline: corners in order, or a circle by its diameter" })
      .optional(),
    holes: z.array(hole, tell("a list of holes", "Write [{circle: 3, at: [20, 15]}]")).optional(),
    length: part.length
      .meta({ description: "Finished length of a board, or of webbing, cord or tape" })
      .optional(),
    cut: part.positiveCount.meta({ description: "How many" }).optional(),
    seamAllowance: part.length
      .meta({ description: "Allowance all round, for hems or seams" })
      .optional(),
    hem: hem.optional(),
    up: part
      .oneOf(["up", "none"])
      .meta({ description: "none when it may lie any way on the cloth" })
      .optional(),
    at: z
      .union(
        [part.place, z.array(part.place).min(1)],
        tell(
          "a place [x, y, z], or a list of places",
          "Write [0, 0, 0] or [[0, 0, 0], [0, 28, 0]]",
        ),
      )
      .meta({ description: "Where it stands; a list of places for several copies" })
      .optional(),
    along: part.axis.meta({ description: "Axis its length runs along" }).optional(),
    thin: part.axis.meta({ description: "Axis its thickness runs along" }).optional(),
  },
  "a piece with its stock and size",
  "Write {stock: leaf-print, size: [24, 9]}",
);

const audience = z
  .union(
    [
      part.record(
        {
          age: z
            .number(tell("an age in years", "Write digits only"))
            .min(0, tell("an age from 0 up", "Write an age in years"))
            .max(120, tell("an age up to 120", "Write an age in years")),
        },
        "an age",
        "Write {age: 6}",
      ),
      part.record({ stature: part.length }, "a stature", "Write {stature: 118 cm}"),
      part.record({ adult: z.literal(true) }, "an adult", "Write {adult: true}"),
    ],
    tell("one of {age: 6}, {stature: 118 cm}, {adult: true}", "Write {age: 6}"),
  )
  .meta({ description: "Who sits on it" });

const buyLine = part.record(
  {
    item: part.text,
    quantity: z
      .number(tell("a number", "Write digits only"))
      .positive(tell("a number above zero", "Write how many"))
      .max(100_000, tell("at most 100000", "Write a smaller number"))
      .meta({ description: "How many; leave it out where for and covers say it" })
      .optional(),
    unit: part.text.meta({ description: "What is counted, such as pack" }).optional(),
    have: z
      .number(tell("a number", "Write digits only"))
      .min(0, tell("a number from 0 up", "Write how many are on hand"))
      .optional(),
    for: part
      .oneOf(["adhesive", "finish"])
      .meta({ description: "What it is spread on: the glued area of the foam, or all the wood" })
      .optional(),
    covers: z
      .union([z.string(), z.number()], tell("an area such as 2.5 m2", "Write the area one covers"))
      .meta({ description: "Area that one of them covers by its label, such as 2.5 m2" })
      .optional(),
    price: part.price.optional(),
  },
  "a thing to buy",
  "Write {item: screws 4 × 40 mm, quantity: 12}",
);

const made = part.record(
  {
    date: part.text.meta({ description: "Year-month-day, such as 2026-03-14" }).optional(),
    notes: part.text.optional(),
    measured: z
      .record(
        part.dimensionName,
        part.length,
        tell("dimensions as measured", "Write {length: 119.5}"),
      )
      .optional(),
    photo: part.text
      .meta({ description: "File name of a photo beside the project file" })
      .optional(),
  },
  "the record of the finished thing",
  "Write {date: 2026-03-14, notes: …}",
);

const sizes = z.record(
  part.dimensionName,
  part.length,
  tell("names and lengths", "Write name: length, one a line, set in"),
);
const versionText = z.union(
  [part.text, z.number()],
  tell("a version such as 1.2", "Write a version"),
);

/** Everything the front matter of a project file may hold. Lengths are still as written. */
export const projectSchema = part.record(
  {
    title: part.text.max(120, tell("at most 120 characters", "Move the rest to summary")),
    units: part.oneOf(["in", "cm", "mm"]).meta({
      description: "The unit of bare numbers, and the one the booklet prints in",
    }),
    round: part.length
      .meta({ description: "Step that printed inches are rounded to, such as 1/16" })
      .optional(),
    summary: part.text.optional(),
    audience: audience.optional(),
    country: part
      .matching(
        /^(?!UK$)[A-Z]{2}$/,
        "a country of two capitals such as GB",
        "Write two capitals, such as GB (not UK) or US",
      )
      .meta({ description: "Two letters of ISO 3166; chooses paper, wording and rules" })
      .optional(),
    language: part
      .matching(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, "a language such as en-GB", "Write en-GB")
      .optional(),
    time: part.text.meta({ description: "How long it takes, in words" }).optional(),
    skill: part.text.meta({ description: "What the maker should be able to do" }).optional(),
    author: part.text.optional(),
    version: versionText.optional(),
    licence: part.text
      .meta({ description: "SPDX name of the licence, such as CC-BY-4.0" })
      .optional(),
    dimensions: sizes.meta({ description: "Sizes with names, for formulas" }).optional(),
    stock: stock.optional(),
    stockFiles: z
      .array(part.slug, tell("a list of stock files", "Write [shed] for stock/shed.yaml"))
      .meta({ description: "Stock files whose stock this project may use, by name" })
      .optional(),
    solids: solids.optional(),
    pieces: part
      .named(piece, "pieces by name")
      .meta({ description: "Loose pieces of cloth, sheet and board" })
      .optional(),
    buy: z
      .array(buyLine, tell("a list of things to buy", "Write - {item: screws, quantity: 12}"))
      .optional(),
    copies: positiveCopies(),
    classroom: part.yesOrNo
      .meta({ description: "true when a class makes it: adds a risk-assessment template" })
      .optional(),
    variants: z
      .record(part.slug, sizes, tell("variants by name", "Write small: {length: 90}"))
      .meta({ description: "Other sizes of the same thing; each builds its own booklet" })
      .optional(),
    made: made.optional(),
  },
  "front matter of keys and values",
  "Write title: and units: first",
);

function positiveCopies() {
  return part.positiveCount
    .max(200, tell("at most 200 copies", "Write a smaller number"))
    .meta({ description: "How many of the whole thing, such as a class set" })
    .optional();
}

/** A file of stock that several projects use. */
export const stockFileSchema = part.record(
  {
    units: part.oneOf(["in", "cm", "mm"]).meta({ description: "The unit of bare numbers" }),
    stock,
  },
  "units: and stock:",
  "Write units: first, then stock: and its names",
);

export type RawProject = z.infer<typeof projectSchema>;
export type RawStock = NonNullable<RawProject["stock"]>[string];
export type RawSolid = NonNullable<RawProject["solids"]>[string];
export type RawBlock = RawSolid["blocks"][string];
export type RawCover = NonNullable<RawSolid["cover"]>;
export type RawPiece = NonNullable<RawProject["pieces"]>[string];
