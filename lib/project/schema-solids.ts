import { z } from "zod";
import { cornerNames } from "./rounded-corners.ts";
import * as part from "./schema-parts.ts";
import { tell } from "./tell.ts";

const kinds = "box, prism, wedge, cylinder, rounded, frustum";
const giveKind = `Give the block one of ${kinds}`;
const shared = {
  at: part.place.optional(),
  foam: part.identifier.meta({ description: "Slab stock, if not the solid's own" }).optional(),
};

const box = part.record(
  {
    box: z
      .tuple([part.length, part.length, part.length], tell("three lengths [w, d, h]", giveKind))
      .meta({ description: "Width, depth, height" }),
    ...shared,
  },
  "a block",
  giveKind,
);

const prism = part.record(
  {
    prism: part.corners,
    height: part.length.meta({ description: "How far the outline is drawn out" }),
    along: part.axis.meta({ description: "Axis it is drawn out along, z if left out" }).optional(),
    ...shared,
  },
  "a block",
  giveKind,
);

const wedge = part.record(
  {
    wedge: part.record(
      { size: part.threeLengths, rises: part.oneOf(["back", "front", "left", "right"]).optional() },
      "the size of the wedge and the side it rises to",
      "Write {size: [40, 50, 20], rises: back}",
    ),
    ...shared,
  },
  "a block",
  giveKind,
);

const cylinder = part.record(
  {
    cylinder: part.record(
      { diameter: part.length, length: part.length, along: part.axis.optional() },
      "the diameter and length of the cylinder",
      "Write {diameter: 45, length: 40, along: z}",
    ),
    ...shared,
  },
  "a block",
  giveKind,
);

const corner = part.oneOf(cornerNames);

const rounded = part.record(
  {
    rounded: part.record(
      {
        size: part.threeLengths,
        radius: part.length,
        along: part.axis
          .meta({ description: "Axis its edges are rounded along, z if left out" })
          .optional(),
        corners: z
          .array(corner, tell("a list of corners", "Write [front-left, front-right]"))
          .meta({
            description: "Corners that are rounded, all four if left out: front-top with along x",
          })
          .optional(),
      },
      "the size, radius and rounded corners",
      "Write {size: [50, 50, 10], radius: 8, corners: [front-left, front-right]}",
    ),
    ...shared,
  },
  "a block",
  giveKind,
);

const frustum = part.record(
  {
    frustum: part.record(
      {
        base: part.length.meta({ description: "Diameter at the bottom" }),
        top: part.length.meta({ description: "Diameter at the top, 0 for a cone" }),
        height: part.length,
      },
      "the two diameters and the height",
      "Write {base: 50, top: 40, height: 35}",
    ),
    ...shared,
  },
  "a block",
  giveKind,
);

const block = z.union(
  [box, prism, wedge, cylinder, rounded, frustum],
  tell(`a block: one of ${kinds}`, giveKind),
);

const axisAmount = z.union(
  [part.length, part.threeLengths],
  tell("a length, or three for x, y, z", "Write 1 or [1, 1, 0]"),
);
const fit = z
  .union(
    [
      z.literal("exact"),
      part.record({ smallerBy: axisAmount }, "how much smaller", "Write {smallerBy: 1}"),
      part.record({ largerBy: axisAmount }, "how much larger", "Write {largerBy: 1}"),
    ],
    tell("exact, {smallerBy: …} or {largerBy: …}", "Write exact, or {smallerBy: 1}"),
  )
  .meta({ description: "How much smaller or larger than the foam the cover is made" });

const faces = z.array(part.faceName, tell("a list of faces", "Write [pad/top, pad/back]"));

const panels = z
  .union(
    [
      part.oneOf(["auto", "fewest", "least-cloth", "upright", "plain"]),
      z.array(
        part.record(
          { name: part.text, faces },
          "a panel with its name and faces",
          "Write {name: seat, faces: [pad/top]}",
        ),
      ),
    ],
    tell(
      "auto, fewest, least-cloth, upright, plain, or a list of panels",
      "Write one of the words, or a list of {name, faces}",
    ),
  )
  .meta({ description: "How the cover is divided; auto chooses" });

const open = z
  .union(
    [
      z.literal("auto"),
      z.array(
        z.union(
          [
            part.faceName,
            part.record(
              {
                between: z.tuple(
                  [part.faceName, part.faceName],
                  tell("two faces", "Write [pad/back, pad/underside]"),
                ),
                length: part.length
                  .meta({
                    description:
                      "How much of that seam stays open, such as the length of a zip on hand: the middle of it, or on a round seam as much from the end of the strip on; all of it if left out",
                  })
                  .optional(),
              },
              "two faces, and how much of the seam between them stays open",
              "Write {between: [pad/back, pad/underside], length: 40 cm}",
            ),
          ],
          tell(
            "a face, or {between: [face, face]}",
            "Write pad/back or {between: [pad/back, pad/top]}",
          ),
        ),
      ),
    ],
    tell("auto, or a list of seams left open", "Write auto or [pad/back]"),
  )
  .meta({ description: "Seams left open for the foam; proposed if left out" });

const closing = part.record(
  {
    kind: part.oneOf(["zip", "hook-and-loop", "ties", "hand-sewn"]),
    stock: part.identifier.meta({ description: "The zip stock it is taken from" }).optional(),
    across: part.faceName
      .meta({ description: "A strip that is cut in two along its middle for the closing" })
      .optional(),
  },
  "a way to close",
  "Write {kind: zip, stock: long-zip}",
);

const piping = part.record(
  {
    cord: part.length.meta({ description: "Diameter of the cord" }),
    along: faces.min(1, tell("at least one face", "Write along: [pad/top]")),
    cut: part.oneOf(["bias", "straight"]).optional(),
    stock: part.identifier
      .meta({ description: "The length stock the cord is cut from" })
      .optional(),
  },
  "the cord and the faces it runs round",
  "Write {cord: 5 mm, along: [pad/top]}",
);

const allowances = part
  .record(
    {
      zip: part.length.meta({ description: "At edges a zip is sewn to" }).optional(),
      opening: part.length
        .meta({ description: "At edges closed by hand, by tape or by ties" })
        .optional(),
    },
    "allowances by the kind of edge",
    "Write {zip: 2, opening: 2.5}",
  )
  .meta({ description: "Allowances where they differ from seamAllowance" });

const print = part
  .record(
    {
      centre: faces.optional(),
      match: z
        .array(
          z.tuple([part.faceName, part.faceName], tell("two faces", "Write [pad/top, pad/front]")),
          tell("a list of pairs of faces", "Write [[pad/top, pad/front]]"),
        )
        .meta({ description: "Pairs of faces whose print runs on across the seam between them" })
        .optional(),
    },
    "faces to centre the motif on, and pairs to match",
    "Write {centre: [pad/top], match: [[pad/top, pad/front]]}",
  )
  .meta({ description: "Where a print with a repeat has to lie" });

const coordinate = z.union(
  [part.length, z.literal("centre")],
  tell("a length or centre", "Write centre or 4"),
);
const attachment = part.record(
  {
    piece: part.identifier,
    on: part.faceName,
    at: z
      .tuple([coordinate, coordinate], tell("two lengths, or centre", "Write [centre, 4]"))
      .meta({ description: "From the lower left corner of the face seen from outside" })
      .optional(),
  },
  "the piece and the face it is sewn to",
  "Write {piece: handle, on: pad/front, at: [centre, 4]}",
);

const cover = part.record(
  {
    fabric: part.identifier.meta({ description: "Fabric stock the cover is cut from" }),
    seamAllowance: part.length.optional(),
    allowances: allowances.optional(),
    fit: fit.optional(),
    print: print.optional(),
    panels: panels.optional(),
    open: open.optional(),
    hinge: part.faceName.optional(),
    closing: closing.optional(),
    piping: piping.optional(),
    attach: part.named(attachment, "attachments by name").optional(),
    up: z
      .record(
        z.string(),
        part.oneOf(["up", "down", "front", "back", "left", "right"]),
        tell("faces and the way their print runs", "Write {pad/top: back}"),
      )
      .meta({ description: "Faces whose print you turn, and the way it then runs" })
      .optional(),
    anchor: part
      .oneOf(["pad", "tacks", "seam"])
      .meta({ description: "How cloth over an inward corner is held down" })
      .optional(),
    neaten: part
      .oneOf(["zigzag", "overedge"])
      .meta({ description: "Stitch that keeps raw edges from fraying; they are left raw without" })
      .optional(),
  },
  "a cover with its fabric",
  "Write cover: and fabric: below it",
);

const solid = part.record(
  {
    foam: part.identifier.meta({ description: "Slab stock the blocks are cut from" }).optional(),
    blocks: part.named(block, "blocks by name"),
    cover: cover.optional(),
  },
  "a solid with its blocks",
  "Write blocks: and the blocks below it",
);

export const solids = part
  .named(solid, "solids by name")
  .meta({ description: "Things glued up from blocks; x left to right, y front to back, z up" });
