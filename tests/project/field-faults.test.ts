import { describe, expect, test } from "vitest";
import { faultsOf, projectText } from "./project-text.ts";

const cover = (rest: string) => ({
  solids: `{pad: {foam: foam, blocks: {slab: {box: [length, depth, 8]}, roll: {cylinder: {diameter: 5, length: 9, along: x}}}, cover: {fabric: print, ${rest}}}}`,
});
const block = (rest: string) => ({ solids: `{pad: {blocks: {slab: ${rest}}}}` });
const piece = (rest: string) => ({ pieces: `{strap: {${rest}}}` });
const stock = (rest: string) => ({
  stock: `{print: {kind: fabric, width: 140}, own: {${rest}}}`,
  solids: null,
  pieces: "{strap: {stock: print, size: [24, 9]}}",
});

// One row for each kind of fault: what is changed in a sound file, and the line that then is printed.
const rows: readonly (readonly [Readonly<Record<string, string | null>>, string])[] = [
  // ---- keys and plain values
  [
    { title: null },
    "1 title: is missing: expected words. Put the words on one line, in quotes if they are a number or hold a colon.",
  ],
  [
    { title: "2026" },
    "2 title: expected words, got 2026. Put the words on one line, in quotes if they are a number or hold a colon.",
  ],
  [{ units: "feet" }, '3 units: expected one of in, cm, mm, got "feet". Write one of in, cm, mm.'],
  [{ summary: "" }, "8 summary: has no value. Write one, or take the line out."],
  [{ sumary: "x" }, "8 sumary: is not a key that is known here. Write summary if that was meant."],
  [
    { country: "UK" },
    '8 country: expected a country of two capitals such as GB, got "UK". Write two capitals, such as GB (not UK) or US.',
  ],
  [
    { language: "English!" },
    '8 language: expected a language such as en-GB, got "English!". Write en-GB.',
  ],
  [
    { copies: "0" },
    "8 copies: expected a whole number from 1 up, got 0. Write 1 or more, or take the line out.",
  ],
  [{ copies: "2.5" }, "8 copies: expected a whole number, got 2.5. Write digits only."],
  [
    { copies: "100000" },
    "8 copies: expected a whole number up to 10000, got 100000. Write a smaller number.",
  ],
  [{ copies: "900" }, "8 copies: expected at most 200 copies, got 900. Write a smaller number."],
  [{ copies: "thirty" }, '8 copies: expected a whole number, got "thirty". Write digits only.'],
  [
    { audience: "{age: six}" },
    '8 audience.age: expected an age in years, got "six". Write digits only.',
  ],
  [
    { audience: "{agee: 6}" },
    "8 audience.agee: is not a key that is known here. Write age if that was meant.",
  ],
  [
    { audience: "everyone" },
    '8 audience: expected one of {age: 6}, {stature: 118 cm}, {adult: true}, got "everyone". Write {age: 6}.',
  ],
  [
    { audience: "{stature: 118 in}" },
    '8 audience.stature: is "118 in", no one\'s stature. Give the height of the sitter with its unit, such as 118 cm.',
  ],
  [{ round: "1/16" }, "8 round: is not for a project in cm. Take the line out."],
  [
    { units: "in", round: "1/3" },
    '8 round: expected 1/2, 1/4, 1/8, 1/16, 1/32 or 1/64, got "1/3". Write the step as a fraction, such as 1/16.',
  ],
  // ---- dimensions and variants
  [
    { dimensions: "{length: 120, depth: 42, in: 3}" },
    "4 dimensions.in: is a word that formulas already use. Choose another name.",
  ],
  [
    { dimensions: "{length: 120, depth: 42, a: b, b: a}" },
    '4 dimensions.a: expected a length such as 1.5 cm or 1/2 in, got "b". Give one of them a size of its own, because a needs b needs a, which goes round in a circle.',
  ],
  [
    { dimensions: "{length: 120, depth: 42, seat+high: 3}" },
    '4 dimensions.seat+high: expected a name of letters, digits and single hyphens that starts with a letter, got "seat+high". Write a name such as seat-depth.',
  ],
  [
    { dimensions: "{length: 120, depth: 0}" },
    "4 dimensions.depth: expected a length such as 1.5 cm or 1/2 in, got 0. Write a length above zero, because the length is zero.",
  ],
  [
    { dimensions: "{length: 120, depth: depth2 - 1}" },
    '4 dimensions.depth: expected a length such as 1.5 cm or 1/2 in, got "depth2 - 1". Write depth if that was meant, because depth2 is not a name listed in dimensions.',
  ],
  [
    { dimensions: "{length: 120, depth: 42, thick: 40 - length}" },
    '4 dimensions.thick: expected a length such as 1.5 cm or 1/2 in, got "40 - length". Write a length above zero, because the length is negative.',
  ],
  [
    { variants: "{small: {lenght: 90}}" },
    "8 variants.small.lenght: is not a name listed in dimensions. Write length if that was meant.",
  ],
  [
    { variants: "{Small: {length: 90}}" },
    '8 variants.Small: expected a name of small letters, digits and hyphens, got "Small". Write a name such as small.',
  ],
  [
    { ...block("{box: [length, length - 50, 8]}"), variants: "{small: {length: 40}}" },
    '8 variants.small: does not go with solids.pad.blocks.slab.box.1: expected a length such as 1.5 cm or 1/2 in, got "length - 50". Write a length above zero, because the length is negative.',
  ],
  // ---- stock
  [
    stock("kind: yarn"),
    '5 stock.own.kind: expected one of slab, fabric, sheet, board, zip, length, got "yarn". Write kind: and one of slab, fabric, sheet, board, zip, length.',
  ],
  [
    stock("kind: slab, size: [1, 2]"),
    "5 stock.own.size: expected three lengths, got a list of 2. Write them as a list in square brackets; quote a decimal comma, as in ['62,5', 40].",
  ],
  [
    stock("kind: slab, size: [1, 2, 3], density: 35"),
    "5 stock.own.density: expected a density such as 35 kg/m3 or 1.8 lb/ft3, got 35. Write a density such as 35 kg/m3 or 1.8 lb/ft3, because 35 has no unit.",
  ],
  [
    stock("kind: slab, size: [1, 2, 3], hardness: 35 kg"),
    '5 stock.own.hardness: expected a hardness such as 150 N or 35 lb, got "35 kg" (see character 3). Write a hardness such as 150 N or 35 lb, because kg is not a unit for this.',
  ],
  [
    stock("kind: slab, size: [1, 2, 3], have: 1.5"),
    "5 stock.own.have: expected a whole number, got 1.5. Write digits only.",
  ],
  [
    stock("kind: slab, size: [1, 2, 3], width: 3"),
    "5 stock.own.width: is not a key that is known here. Use one of kind, label, size, have, density, hardness, kerf, reclaimed, price, also, leastOffcut.",
  ],
  [
    stock("kind: fabric, width: 140, shrink: 0.03"),
    "5 stock.own.shrink: expected a percentage such as 3 %, got 0.03. Write a percentage such as 3 %, because 0.03 has no unit.",
  ],
  [
    stock("kind: fabric, width: 140, price: 9 each"),
    '5 stock.own.price: expected a price such as 14 per m, got "9 each" (see character 2). Write a price such as 14 per m or 12 per yd, because this is sold by the length, not "each".',
  ],
  [
    stock("kind: fabric, width: 140, selvedge: 70"),
    "5 stock.own.selvedge: leaves no cloth between the two selvedges. Give the width of one selvedge, much less than half the cloth.",
  ],
  [
    stock("kind: fabric, width: '1,000'"),
    '5 stock.own.width: expected a length such as 1.5 cm or 1/2 in, got "1,000". Write 1000 or 1.000, because 1,000 can be read as 1000 or as 1.000.',
  ],
  [
    stock("kind: fabric, width: 140, direction: oneway"),
    '5 stock.own.direction: expected one of one-way, two-way, any, got "oneway". Write one of one-way, two-way, any.',
  ],
  [
    stock("kind: fabric, width: 140, twoFaced: yes"),
    '5 stock.own.twoFaced: expected true or false, got "yes". Write true or false.',
  ],
  [
    stock("kind: board, section: [3, 2], length: 240, kerf: -1"),
    "5 stock.own.kerf: expected a length such as 1.5 cm or 1/2 in, got -1. Write a length above zero, because the length is negative.",
  ],
  // ---- solids
  [
    block("{box: [length, dpeth, 8]}"),
    '6 solids.pad.blocks.slab.box.1: expected a length such as 1.5 cm or 1/2 in, got "dpeth". Write depth if that was meant, because dpeth is not a name listed in dimensions.',
  ],
  [
    block("{box: [2 * length, depth + wdith, 8]}"),
    '6 solids.pad.blocks.slab.box.1: expected a length such as 1.5 cm or 1/2 in, got "depth + wdith" (see character 9). Write a number, or one of length, depth, because wdith is not a name listed in dimensions.',
  ],
  [
    block("{boxs: [1, 2, 3]}"),
    "6 solids.pad.blocks.slab.boxs: is not a key that is known here. Write box if that was meant.",
  ],
  [
    block("{box: [1, 2]}"),
    "6 solids.pad.blocks.slab.box: expected three lengths [w, d, h], got a list of 2. Give the block one of box, prism, wedge, cylinder, rounded, frustum.",
  ],
  [
    block("{rounded: {size: [9, 9, 4], radius: 2, corners: [front/top]}}"),
    '6 solids.pad.blocks.slab.rounded.corners.0: expected one of front-left, front-right, back-right, back-left, front-underside, back-underside, back-top, front-top, left-underside, right-underside, right-top, left-top, got "front/top". Write one of front-left, front-right, back-right, back-left, front-underside, back-underside, back-top, front-top, left-underside, right-underside, right-top, left-top.',
  ],
  [
    block("{rounded: {size: [9, 9, 4], radius: 2, along: x, corners: [front-top, front-left]}}"),
    "6 solids.pad.blocks.slab.rounded.corners: names front-left, which a block rounded along x has not. Use some of front-underside, back-underside, back-top, front-top.",
  ],
  [
    block("a box"),
    '6 solids.pad.blocks.slab: expected a block: one of box, prism, wedge, cylinder, rounded, frustum, got "a box". Give the block one of box, prism, wedge, cylinder, rounded, frustum.',
  ],
  [
    block("{prism: [[0,0],[5,0]], height: 2}"),
    "6 solids.pad.blocks.slab.prism: has 2 corners, and needs 3. Give three corners or more.",
  ],
  [
    block("{prism: [[0,0],[9,9],[9,0],[0,9]], height: 2}"),
    "6 solids.pad.blocks.slab.prism: crosses itself: sides 1 and 3 meet. List the corners in the order you meet them going round.",
  ],
  [
    block("{prism: [[0,0],[9,0],[9,9],[0,0]], height: 2}"),
    "6 solids.pad.blocks.slab.prism: has corners 4 and 1 in the same place. Take one of them out; the first corner is not repeated at the end.",
  ],
  [
    block("{prism: [[0,0],[9,0],[4,0]], height: 2}"),
    "6 solids.pad.blocks.slab.prism: crosses itself: sides 1 and 2 meet. List the corners in the order you meet them going round.",
  ],
  [
    block("{prism: [[0,0],[9,0],[9,9]], height: 2, along: up}"),
    '6 solids.pad.blocks.slab.along: expected one of x, y, z, got "up". Write one of x, y, z.',
  ],
  [
    block("{prism: [[0,0],[9,0],[9,9]]}"),
    "6 solids.pad.blocks.slab.height: is missing: expected a length such as 1.5 cm or 1/2 in. Write a number, a number with its unit, or a formula over dimensions.",
  ],
  [
    block("{wedge: {size: [4, 5, 6], rises: up}}"),
    '6 solids.pad.blocks.slab.wedge.rises: expected one of back, front, left, right, got "up". Write one of back, front, left, right.',
  ],
  [
    block("{rounded: {size: [10, 10, 5], radius: 6}}"),
    "6 solids.pad.blocks.slab.rounded.radius: is larger than the sides have room for. Make the radius smaller, or use a cylinder.",
  ],
  [
    block("{rounded: {size: [10, 10, 5], radius: 2, corners: [front-left, front-left]}}"),
    "6 solids.pad.blocks.slab.rounded.corners: names front-left twice. Take one of them out.",
  ],
  [
    block("{frustum: {base: 5, top: 5, height: 4}}"),
    "6 solids.pad.blocks.slab.frustum.top: is as large as the base. Make one of them smaller, or use a cylinder.",
  ],
  [
    { solids: "{pad: {foam: print, blocks: {slab: {box: [1, 2, 3]}}}}" },
    "6 solids.pad.foam: names print, which is a fabric, not a slab. Use foam.",
  ],
  [
    block("{box: [1, 2, 3], foam: foma}"),
    "6 solids.pad.blocks.slab.foam: names foma, which is not in stock. Write foam if that was meant.",
  ],
  [
    { solids: "{pad: {blocks: {}}}" },
    "6 solids.pad.blocks: has no block. Give it at least one block.",
  ],
  [
    { solids: null, pieces: null },
    "1 solids: is missing, and so is pieces. Describe a solid or a piece to make.",
  ],
  // ---- covers
  [
    cover("seamAllowance: forty"),
    '6 solids.pad.cover.seamAllowance: expected a length such as 1.5 cm or 1/2 in, got "forty". Write a number, or one of length, depth, because forty is not a name listed in dimensions.',
  ],
  [
    cover("fit: tight"),
    '6 solids.pad.cover.fit: expected exact, {smallerBy: …} or {largerBy: …}, got "tight". Write exact, or {smallerBy: 1}.',
  ],
  [
    cover("fit: {smallerBy: [1, 2]}"),
    "6 solids.pad.cover.fit.smallerBy: expected a length, or three for x, y, z, got a list of 2. Write 1 or [1, 1, 0].",
  ],
  [
    cover("panels: cheapest"),
    '6 solids.pad.cover.panels: expected auto, fewest, least-cloth, upright, plain, or a list of panels, got "cheapest". Write one of the words, or a list of {name, faces}.',
  ],
  [
    cover("panels: [{name: a, faces: [slab/top]}, {name: b, faces: [slab/top]}]"),
    '6 solids.pad.cover.panels.1.faces.0: names slab/top, which is already in the panel "a". A face can be in one panel only: take one of the two out.',
  ],
  [
    cover("panels: [{name: a, faces: [slab/top]}, {name: a, faces: [slab/back]}]"),
    '6 solids.pad.cover.panels.1.name: is "a" a second time. Give each panel a name of its own.',
  ],
  [
    cover("panels: [{name: a, faces: []}]"),
    "6 solids.pad.cover.panels.0.faces: names no face. Name at least one face.",
  ],
  [
    cover("open: [slab/botom]"),
    "6 solids.pad.cover.open.0: names slab/botom, but a box has no side botom. Its sides are top, underside, front, back, left and right.",
  ],
  [
    cover("open: [slab/bottom]"),
    "6 solids.pad.cover.open.0: names slab/bottom, but a box has no side bottom. Write slab/underside if that was meant; its sides are top, underside, front, back, left and right.",
  ],
  [
    cover("open: [slap/back]"),
    "6 solids.pad.cover.open.0: names the block slap, which this solid does not have. Write slab if that was meant.",
  ],
  [
    cover("open: [back]"),
    '6 solids.pad.cover.open.0: expected a face such as slab/top, got "back". Write block/side, such as slab/top.',
  ],
  [
    cover("open: [{between: [slab/back, slab/back]}]"),
    "6 solids.pad.cover.open.0.between: names slab/back twice. Name the two faces that the seam lies between.",
  ],
  [
    cover("hinge: roll/front"),
    "6 solids.pad.cover.hinge: names roll/front, but a cylinder has no side front. Its sides are around, left and right.",
  ],
  [
    cover("up: {slab/topp: left}"),
    "6 solids.pad.cover.up.slab/topp: names slab/topp, but a box has no side topp. Write slab/top if that was meant; its sides are top, underside, front, back, left and right.",
  ],
  [
    cover("closing: {kind: zip, stock: print}"),
    "6 solids.pad.cover.closing.stock: names print, which is a fabric, not a zip. Use zip.",
  ],
  [
    cover("closing: {kind: ties, stock: zip}"),
    "6 solids.pad.cover.closing.stock: is not used by ties. Take stock out, or write kind: zip.",
  ],
  [
    cover("closing: {kind: buttons}"),
    '6 solids.pad.cover.closing.kind: expected one of zip, hook-and-loop, ties, hand-sewn, got "buttons". Write one of zip, hook-and-loop, ties, hand-sewn.',
  ],
  [
    cover("piping: {cord: 0.5, along: [slab/edge]}"),
    "6 solids.pad.cover.piping.along.0: names slab/edge, but a box has no side edge. Its sides are top, underside, front, back, left and right.",
  ],
  [
    cover("attach: {h: {piece: strip, on: slab/front}}"),
    "6 solids.pad.cover.attach.h.piece: names strip, which is not in pieces. Write strap if that was meant.",
  ],
  [
    cover("attach: {h: {piece: strap, on: slab/font}}"),
    "6 solids.pad.cover.attach.h.on: names slab/font, but a box has no side font. Write slab/front if that was meant; its sides are top, underside, front, back, left and right.",
  ],
  [
    cover("anchor: glue"),
    '6 solids.pad.cover.anchor: expected one of pad, tacks, seam, got "glue". Write one of pad, tacks, seam.',
  ],
  // ---- pieces, things to buy, the record
  [
    piece("stock: zip, size: [1, 2]"),
    "7 pieces.strap.stock: names zip, which is a zip, not a fabric or sheet or board or length. Use print or ply or lath.",
  ],
  [piece("stock: print"), "7 pieces.strap: has no size. Give it one of size, outline."],
  [
    piece("stock: print, size: [1, 2], outline: {circle: 3}"),
    "7 pieces.strap: has both size and outline. Give it one of size, outline.",
  ],
  [
    piece("stock: print, length: 3"),
    "7 pieces.strap.length: is not for a fabric. Give it size or outline instead.",
  ],
  [
    piece("stock: lath, size: [3, 2]"),
    "7 pieces.strap.size: is not for a board. Give it length instead.",
  ],
  [
    piece("stock: ply, size: [3, 2], seamAllowance: 1"),
    "7 pieces.strap.seamAllowance: is not for a sheet. Take the line out.",
  ],
  [
    piece("stock: ply, size: [9, 9], holes: [{circle: 3, at: [8, 4]}]"),
    "7 pieces.strap.holes.0: reaches outside the piece. Move it, or make it smaller.",
  ],
  [
    piece("stock: print, size: [-4, 2]"),
    "7 pieces.strap.size.0: expected a length such as 1.5 cm or 1/2 in, got -4. Write a length above zero, because the length is negative.",
  ],
  [{ buy: "[{item: screws}]" }, "8 buy.0.quantity: is missing. Write how many, or for and covers."],
  [
    { buy: "[{item: screws, quantity: 0}]" },
    "8 buy.0.quantity: expected a number above zero, got 0. Write how many.",
  ],
  [
    { buy: "[{item: screws, quantity: 1, price: £3}]" },
    '8 buy.0.price: expected a price such as 9 each, got "£3". Write a price such as 9 each, because a price has no currency sign.',
  ],
  [
    { made: "{date: 14 March 2026}" },
    '8 made.date: expected a date such as 2026-03-14, got "14 March 2026". Write year-month-day.',
  ],
  [
    { made: "{date: 2026-02-29}" },
    '8 made.date: expected a date such as 2026-03-14, got "2026-02-29". Write year-month-day.',
  ],
  [
    { made: "{measured: {lenght: 119}}" },
    "8 made.measured.lenght: is not a name listed in dimensions. Write length if that was meant.",
  ],
  [
    { made: "{photo: ../../secret.jpg}" },
    '8 made.photo: expected the name of a picture, got "../../secret.jpg". Put the photo beside the project file and write its name.',
  ],
];

describe("a fault in the front matter", () => {
  test.each(rows)("%o is told in one line", (changes, message) => {
    expect(faultsOf(projectText(changes))).toEqual([`content/pad.md:${message}`]);
  });

  test.each([
    "layout",
    "permalink",
    "pagination",
    "eleventyComputed",
    "templateEngineOverride",
    "tags",
    "date",
    "eleventyExcludeFromCollections",
  ])("the site builder's own key %s is refused", (key) => {
    expect(faultsOf(projectText({ [key]: "x" }))).toEqual([
      `content/pad.md:8 ${key}: is a key that a project file may not set. Take it out; the layouts belong to the site, not to the project.`,
    ]);
  });

  test("a file name that cannot be an address is refused", () => {
    expect(faultsOf(projectText(), "content/My Pad.md")).toEqual([
      "content/My Pad.md:1 file: has a name that cannot be an address. Use small letters, digits and single hyphens, such as bay-pad.md.",
    ]);
  });

  test("the sound file these rows change has no fault", () => {
    expect(faultsOf(projectText())).toEqual([]);
  });
});
