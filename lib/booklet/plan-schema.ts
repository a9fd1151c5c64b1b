import { z } from "zod";

const mm = z.number().meta({ description: "Millimetres" });
const mm2 = z.number().meta({ description: "Square millimetres" });
const degrees = z.number().meta({ description: "Degrees, counter-clockwise" });
const count = z.int().nonnegative();
const point = z.tuple([mm, mm]).readonly();
const point3 = z.tuple([mm, mm, mm]).readonly();
const direction = z.tuple([z.number(), z.number(), z.number()]).readonly();
const pair = z.tuple([z.string(), z.string()]).readonly();
const bend = z.enum(["convex", "inward"]);
const list = <Each extends z.ZodType>(each: Each) => z.array(each).readonly();
const outline = list(point).meta({
  description:
    "Corners right side up, y up, from the lowest then leftmost; arcs flattened to 0.05 mm",
});

const panel = z.strictObject({
  id: z.string(),
  label: z.string(),
  faces: list(z.string()),
  cut: count,
  mirrorOf: z.string().nullable(),
  outline,
  cutOutline: outline,
  folds: list(z.strictObject({ faces: pair, from: point, to: point, bend })),
  print: list(z.strictObject({ face: z.string(), turn: degrees })),
  area: mm2,
  size: point,
});

const seam = z.strictObject({
  id: z.string(),
  panels: pair,
  length: point,
  order: count,
  state: z.enum(["sewn", "closing", "open"]),
  corners: list(z.strictObject({ along: mm, clip: z.string().nullable(), turn: degrees })),
});

const way = z.strictObject({
  id: z.string(),
  panels: count,
  seamLength: mm,
  clothLength: mm.nullable(),
  turnedFaces: list(z.string()),
  inwardFolds: count,
  chosen: z.boolean(),
});

const solid = z.strictObject({
  bounds: point3,
  volume: z.number().meta({ description: "Cubic millimetres" }),
  area: mm2,
  mass: z.number().nullable().meta({ description: "Kilograms" }),
  centreOfMass: point3,
  blocks: z.record(z.string(), z.strictObject({ size: point3, volume: z.number() })),
  joints: list(z.strictObject({ blocks: pair, area: mm2 })),
  faces: list(
    z.strictObject({
      id: z.string(),
      names: list(z.string()),
      label: z.string(),
      area: mm2,
      normal: direction,
      up: direction,
    }),
  ),
  edges: list(z.strictObject({ faces: pair, length: mm, bend })),
  panels: list(panel),
  seams: list(seam),
  ways: list(way),
  opening: z
    .strictObject({
      run: mm,
      girth: mm,
      needed: mm,
      give: z.number(),
      fits: z.boolean(),
      reason: z.string(),
    })
    .nullable(),
  refolds: z.strictObject({ ok: z.boolean(), worst: mm }).nullable(),
  closing: z
    .strictObject({
      kind: z.enum(["zip", "hook-and-loop", "ties", "hand-sewn"]),
      run: mm,
      buy: mm,
      have: mm,
      short: mm,
    })
    .nullable(),
  sewing: z
    .strictObject({
      ok: z.boolean(),
      faults: list(z.string()),
      passes: list(
        z.strictObject({
          seams: list(z.string()),
          ring: z.boolean(),
          length: mm,
          corners: list(z.strictObject({ along: mm, clip: z.string().nullable(), turn: degrees })),
          joins: pair,
          makes: z.string(),
        }),
      ),
    })
    .nullable()
    .meta({ description: "The order of sewing, one entry for each time the needle goes down" }),
  sizes: z
    .strictObject({
      panels: list(
        z.strictObject({ id: z.string(), foam: point.nullable(), finished: point, cut: point }),
      ),
      blocks: list(z.strictObject({ id: z.string(), foam: point3, finished: point3 })),
    })
    .nullable()
    .meta({ description: "Sizes on the bare foam, finished and as cut, side by side" }),
});

const piece = z.strictObject({
  label: z.string(),
  stock: z.string(),
  cut: count,
  mirrorOf: z.string().nullable(),
  outline,
  cutOutline: outline,
  holes: list(outline),
  area: mm2,
  size: point,
  /** Edges of the outline and then of the holes, with what is added to each. */
  edges: list(z.strictObject({ length: mm, allowance: mm })),
});

const lay = z.strictObject({
  width: mm,
  length: mm,
  buy: mm,
  have: mm,
  short: mm,
  yield: z.number(),
  lowerBound: mm.meta({ description: "No lay can be shorter" }),
  separately: mm.meta({ description: "Length for as many lays of one set each" }),
  copies: count,
  places: list(
    z.strictObject({
      piece: z.string(),
      copy: count,
      x: mm,
      y: mm,
      turn: degrees,
      flipped: z.boolean(),
      outline: list(point),
    }),
  ),
  sections: list(
    z.strictObject({
      kind: z.enum(["length", "remnant", "bought"]),
      label: z.string().nullable(),
      start: mm,
      length: mm,
      outline: list(point),
      flaws: list(list(point)),
    }),
  ).meta({ description: "Pieces of cloth the lay is on, where they are several" }),
  splits: list(
    z.strictObject({ piece: z.string(), parts: list(z.string()), at: list(mm), allowance: mm }),
  ).meta({ description: "Pieces wider than the cloth, laid in parts" }),
  folded: mm.nullable().meta({ description: "Length laid double and cut two at a time" }),
});

const cutPlan = z.strictObject({
  used: list(
    z.strictObject({
      stockIndex: count,
      size: list(mm),
      places: list(
        z.strictObject({
          piece: z.string(),
          copy: count,
          at: list(mm),
          size: list(mm),
          layer: z.tuple([count, count]).readonly(),
          outline: list(point).nullable(),
          holes: list(list(point)),
          twin: z
            .string()
            .optional()
            .meta({ description: "Another piece that one cut aslant gives from the same blank" }),
        }),
      ),
      cuts: list(
        z.strictObject({
          order: count,
          kind: z.enum(["rip", "cross", "slice", "free"]),
          axis: count,
          at: mm,
          of: z.strictObject({ at: list(mm), size: list(mm) }),
        }),
      ),
      offcuts: list(z.strictObject({ at: list(mm), size: list(mm), use: z.string().nullable() })),
    }),
  ),
  needed: count,
  have: count,
  short: list(z.strictObject({ piece: z.string(), reason: z.string(), remedy: z.string() })),
  lowerBound: count.meta({ description: "Pieces of stock that no plan can use fewer of" }),
  yield: z.number().meta({ description: "Content of the parts ÷ content of all stock cut" }),
  separately: count.meta({ description: "Pieces of stock for as many plans of one set each" }),
  sizes: list(
    z.strictObject({
      label: z.string().nullable(),
      size: list(mm),
      have: count,
      used: count,
      buy: count,
      price: z.number().nullable(),
    }),
  ).meta({ description: "Sizes of the stock, where it comes in several" }),
  buys: z
    .strictObject({ unit: z.enum(["price", "content"]), cost: z.number(), bound: z.number() })
    .nullable()
    .meta({ description: "What is bought, and the least any plan must buy" }),
});

const severity = z.enum(["danger", "warning", "caution", "note"]);

/** What plan.json holds. The JSON Schema beside the site is made from this. */
export const planSchema = z
  .strictObject({
    format: z.literal("slipcase-plan/1"),
    title: z.string(),
    units: z.enum(["in", "cm", "mm"]),
    slug: z.string(),
    copies: count,
    solids: z.record(z.string(), solid),
    pieces: z.record(z.string(), piece),
    lays: z.record(z.string(), lay),
    slabs: z.record(z.string(), cutPlan),
    sheets: z.record(z.string(), cutPlan),
    boards: z.record(z.string(), cutPlan),
    materials: list(
      z.strictObject({
        id: z.string(),
        item: z.string(),
        quantity: z.number(),
        unit: z.string(),
        have: z.number(),
        buy: z.number(),
        basis: z.string(),
        price: z.number().nullable(),
      }),
    ),
    steps: list(
      z.strictObject({
        id: z.string(),
        title: z.string(),
        actions: list(z.string()),
        uses: list(z.string()),
        makes: list(z.string()),
        cautions: list(
          z.strictObject({
            id: z.string(),
            severity,
            hazard: z.string(),
            consequence: z.string(),
            avoid: z.string(),
            source: z.string(),
          }),
        ),
        check: z.string().nullable(),
        figure: z.string().nullable(),
      }),
    ),
    findings: list(
      z.strictObject({
        id: z.string(),
        severity,
        about: z.string(),
        message: z.string(),
        remedy: z.string(),
        source: z.string(),
      }),
    ),
  })
  .meta({ title: "Slipcase plan", description: "Everything computed for one booklet" });

export type PlanJson = z.infer<typeof planSchema>;

/** The JSON Schema of plan.json. */
export const planJsonSchema = (): object => z.toJSONSchema(planSchema, { target: "draft-7" });
