import type { Ratio } from "../plane/types.ts";
import {
  parseClothWeight,
  parseDensity,
  parseHardness,
  parsePercent,
} from "../units/parse-amounts.ts";
import type { Ledger } from "./ledger.ts";
import { report } from "./ledger.ts";
import { readLength, readOptional, readSizes, takeReading } from "./read-length.ts";
import { readPrice } from "./read-price.ts";
import type { RawStock } from "./schema.ts";
import { readFlaws, readRemnants } from "./resolve-remnants.ts";
import { readAlso } from "./resolve-also.ts";
import type { FabricStock, Stock } from "./types.ts";

type Raw<K extends Stock["kind"]> = Extract<RawStock, { readonly kind: K }>;
type Written = string | number | undefined;

/**
 * Width of a saw cut where the author gives none.
 *
 * @source https://www.slashgear.com/1866963/kerf-cut-woodworking-meaning/: about 1/8 in (3.2 mm) a cut
 */
const sawKerf = 3.2;

/** Resolve one stock: lengths to mm, amounts to their own units. Foam is cut with a knife: kerf 0. */
export function resolveStock(ledger: Ledger, id: string, raw: RawStock): Stock {
  const label = raw.label ?? openHyphens(id);
  const field = `stock.${id}`;
  switch (raw.kind) {
    case "slab":
      return {
        id,
        label,
        kind: "slab",
        size: readSizes(ledger, `${field}.size`, raw.size),
        have: raw.have ?? 0,
        density: readAmount(ledger, `${field}.density`, raw.density),
        hardness: readAmount(ledger, `${field}.hardness`, raw.hardness),
        isReclaimed: raw.reclaimed ?? false,
        kerf: readKerf(ledger, field, { written: raw.kerf, missing: 0 }),
        price: readPrice(ledger, field, { written: raw.price, basis: "each" }),
        ...readAlso(ledger, field, raw),
      };
    case "fabric":
      return resolveFabric(ledger, field, { id, label, raw });
    case "sheet":
      return {
        id,
        label,
        kind: "sheet",
        size: [
          readLength(ledger, `${field}.size.0`, raw.size[0]),
          readLength(ledger, `${field}.size.1`, raw.size[1]),
        ],
        thickness: readLength(ledger, `${field}.thickness`, raw.thickness),
        kerf: readKerf(ledger, field, { written: raw.kerf, missing: sawKerf }),
        grain: raw.grain ?? "none",
        have: raw.have ?? 0,
        price: readPrice(ledger, field, { written: raw.price, basis: "each" }),
        ...(raw.cutting === undefined ? {} : { cutting: raw.cutting }),
        ...readAlso(ledger, field, raw),
      };
    case "board":
      return {
        id,
        label,
        kind: "board",
        section: [
          readLength(ledger, `${field}.section.0`, raw.section[0]),
          readLength(ledger, `${field}.section.1`, raw.section[1]),
        ],
        length: readLength(ledger, `${field}.length`, raw.length),
        kerf: readKerf(ledger, field, { written: raw.kerf, missing: sawKerf }),
        have: raw.have ?? 0,
        price: readPrice(ledger, field, { written: raw.price, basis: "each" }),
        ...readAlso(ledger, field, raw),
      };
    case "zip":
    case "length":
      return resolveLengths(ledger, field, { id, label, raw });
  }
}

/** A name in words: "seat-foam" is "seat foam". */
export function openHyphens(id: string): string {
  return id.replace(/-/g, " ");
}

interface Given<K extends Stock["kind"]> {
  readonly id: string;
  readonly label: string;
  readonly raw: Raw<K>;
}

function resolveFabric(
  ledger: Ledger,
  field: string,
  { id, label, raw }: Given<"fabric">,
): FabricStock {
  const optional = { missing: 0, allow: "notNegative" } as const;
  const width = readLength(ledger, `${field}.width`, raw.width);
  const selvedge = readOptional(ledger, `${field}.selvedge`, raw.selvedge, optional);
  if (selvedge * 2 >= width && raw.selvedge !== undefined) {
    const fix = "Give the width of one selvedge, much less than half the cloth";
    report(ledger, `${field}.selvedge`, "leaves no cloth between the two selvedges", fix);
  }
  const { repeat } = raw;
  return {
    id,
    label,
    kind: "fabric",
    width,
    selvedge,
    // A pattern is taken to have a right way up until the author says otherwise.
    direction: raw.direction ?? (repeat === undefined ? "any" : "one-way"),
    repeat:
      repeat === undefined
        ? null
        : {
            along: readLength(ledger, `${field}.repeat.along`, repeat.along),
            across: readLength(ledger, `${field}.repeat.across`, repeat.across),
          },
    have: readOptional(ledger, `${field}.have`, raw.have, optional),
    shrink: readShrink(ledger, `${field}.shrink`, raw.shrink),
    price: readPrice(ledger, field, { written: raw.price, basis: "metre" }),
    isTwoFaced: raw.twoFaced ?? false,
    thickness: readOptional(ledger, `${field}.thickness`, raw.thickness, { missing: null }),
    weight: readAmount(ledger, `${field}.weight`, raw.weight),
    fibre: raw.fibre ?? null,
    ...(raw.also === undefined
      ? {}
      : { also: readRemnants(ledger, `${field}.also`, { raw: raw.also, width }) }),
    ...(raw.flaws === undefined ? {} : { flaws: readFlaws(ledger, `${field}.flaws`, raw.flaws) }),
    ...(raw.folded === true ? { isFolded: true } : {}),
    ...(raw.mesh === undefined ? {} : { mesh: readLength(ledger, `${field}.mesh`, raw.mesh) }),
  };
}

function resolveLengths(
  ledger: Ledger,
  field: string,
  { id, label, raw }: Given<"zip" | "length">,
): Stock {
  const read = (key: "lengths" | "have") =>
    (raw[key] ?? [])
      .map((each, index) => readLength(ledger, `${field}.${key}.${index}`, each))
      .sort((a, b) => a - b);
  const basis = raw.lengths === undefined ? "metre" : "each";
  const price = readPrice(ledger, field, { written: raw.price, basis });
  return { id, label, kind: raw.kind, lengths: read("lengths"), have: read("have"), price };
}

function readKerf(
  ledger: Ledger,
  field: string,
  { written, missing }: { readonly written: Written; readonly missing: number },
): number {
  return readOptional(ledger, `${field}.kerf`, written, { missing, allow: "notNegative" });
}

function readAmount(ledger: Ledger, field: string, written: Written): number | null {
  if (written === undefined) return null;
  if (field.endsWith(".density")) {
    const expected = "a density such as 35 kg/m3 or 1.8 lb/ft3";
    return takeReading(ledger, field, { written, reading: parseDensity(written), expected });
  }
  if (field.endsWith(".weight")) {
    const expected = "a weight such as 280 g/m2 or 8 oz/yd2";
    return takeReading(ledger, field, { written, reading: parseClothWeight(written), expected });
  }
  const expected = "a hardness such as 150 N or 35 lb";
  return takeReading(ledger, field, { written, reading: parseHardness(written), expected });
}

function readShrink(ledger: Ledger, field: string, written: Written): Ratio {
  if (written === undefined) return 0;
  const expected = "a percentage such as 3 %";
  return takeReading(ledger, field, { written, reading: parsePercent(written), expected }) ?? 0;
}
