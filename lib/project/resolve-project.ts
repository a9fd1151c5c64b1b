import type { Count, Mm } from "../plane/types.ts";
import { isReservedWord } from "../units/length-units.ts";
import { parseArea } from "../units/parse-amounts.ts";
import { parsePrice } from "../units/parse-price.ts";
import { resolveNames } from "../units/resolve-names.ts";
import { checkStock } from "./check-name.ts";
import { describe } from "./describe.ts";
import type { Ledger } from "./ledger.ts";
import { isDropped, report } from "./ledger.ts";
import { readLength, takeReading } from "./read-length.ts";
import { resolveBlock } from "./resolve-block.ts";
import { resolveCover } from "./resolve-cover.ts";
import { resolveMade } from "./resolve-made.ts";
import { resolvePiece } from "./resolve-piece.ts";
import { resolveRound } from "./resolve-round.ts";
import { resolveStock } from "./resolve-stock.ts";
import type { RawProject } from "./schema.ts";
import { suggest } from "./suggest.ts";
import type { Audience, BuyLine, Fault, Project, SolidSpec, Stock } from "./types.ts";

export interface Resolved {
  readonly project: Project;
  /** The dimensions, for formulas in the text; null where one has a fault. */
  readonly names: ReadonlyMap<string, Mm | null>;
  readonly faults: readonly Fault[];
}

export interface ResolveSetting {
  readonly slug: string;
  readonly file: string;
  readonly lines: Readonly<Record<string, Count>>;
  /** Variant to build, null for the file itself. */
  readonly variant: string | null;
  readonly dropped: ReadonlySet<string>;
  /** Stock files by name; null for one with faults of its own. */
  readonly shelf?: Shelf;
}

export type Shelf = ReadonlyMap<string, readonly Stock[] | null>;

/** Turn checked front matter into a project: every length in mm, every name known. Words come later. */
export function resolveProject(raw: RawProject, setting: ResolveSetting): Resolved {
  const faults: Fault[] = [];
  const { units } = raw;
  const shelf = setting.shelf ?? new Map();
  // What a faulty or missing file would have brought is not blamed again where it is named.
  const hasGap = (raw.stockFiles ?? []).some((name) => !shelf.get(name));
  const dropped = hasGap ? new Set([...setting.dropped, "stock"]) : setting.dropped;
  const first: Ledger = { units, names: new Map(), faults, dropped };
  const names = resolveDimensions(first, raw, setting.variant);
  const ledger: Ledger = { ...first, names };
  const own = Object.entries(raw.stock ?? {}).map(([id, each]) => resolveStock(ledger, id, each));
  const stock = [...own, ...fromShelf(ledger, raw, own, shelf)];
  const pieces = Object.entries(raw.pieces ?? {}).map(([id, each]) =>
    resolvePiece(ledger, `pieces.${id}`, { id, raw: each, stock }),
  );
  const solids = resolveSolids(ledger, raw, stock);
  if (solids.length === 0 && pieces.length === 0 && !hasDroppedForm(dropped)) {
    report(ledger, "solids", "is missing, and so is pieces", "Describe a solid or a piece to make");
  }
  const { variant } = setting;
  const project: Project = {
    slug: variant === null ? setting.slug : `${setting.slug}-${variant}`,
    file: setting.file,
    title: variant === null ? raw.title : `${raw.title}, ${variant.replace(/-/g, " ")}`,
    units,
    round: resolveRound(ledger, raw.round),
    summary: raw.summary ?? null,
    audience: resolveAudience(ledger, raw.audience),
    country: raw.country ?? null,
    time: raw.time ?? null,
    skill: raw.skill ?? null,
    version: raw.version === undefined ? null : String(raw.version),
    author: raw.author ?? null,
    language: raw.language ?? "en",
    dimensions: Object.fromEntries([...names].map(([name, size]) => [name, size ?? 0])),
    stock,
    solids,
    pieces,
    buy: (raw.buy ?? []).map((each, index) => resolveBuy(ledger, `buy.${index}`, each)),
    copies: raw.copies ?? 1,
    isForClass: raw.classroom ?? (raw.copies ?? 1) > 1,
    variant,
    licence: raw.licence ?? null,
    made: variant === null ? resolveMade(ledger, raw) : null,
    words: [],
    lines: setting.lines,
  };
  return { project, names, faults };
}

/** The stock of the files a project names; no name may stand for two things. */
function fromShelf(
  ledger: Ledger,
  raw: RawProject,
  own: readonly Stock[],
  shelf: Shelf,
): readonly Stock[] {
  const taken = new Set(own.map(({ id }) => id));
  return (raw.stockFiles ?? []).flatMap((name, index): readonly Stock[] => {
    const field = `stockFiles.${index}`;
    const found = shelf.get(name);
    if (found === undefined) {
      const fix = suggest(name, [...shelf.keys()], `Put it at content/stock/${name}.yaml`);
      report(ledger, field, `names ${name}, which is no stock file`, fix);
      return [];
    }
    if (found === null) {
      report(ledger, field, `names ${name}, which has faults of its own`, "Mend that file first");
      return [];
    }
    for (const { id } of found.filter((each) => taken.has(each.id))) {
      report(ledger, field, `brings ${id}, which is listed already`, "Rename one of the two");
    }
    found.forEach(({ id }) => taken.add(id));
    return found;
  });
}

function hasDroppedForm(dropped: ReadonlySet<string>): boolean {
  return [...dropped].some((field) => /^(solids|pieces)(\.|$)/.test(field));
}

function resolveDimensions(
  ledger: Ledger,
  raw: RawProject,
  variant: string | null,
): ReadonlyMap<string, Mm | null> {
  const base = Object.entries(raw.dimensions ?? {});
  const written = new Map(base);
  for (const name of [...written.keys()]) {
    if (!isReservedWord(name) && name !== "centre") continue;
    const fix = "Choose another name";
    report(ledger, `dimensions.${name}`, "is a word that formulas already use", fix);
    written.delete(name);
  }
  const changed = variant === null ? {} : (raw.variants?.[variant] ?? {});
  for (const [name, size] of Object.entries(changed)) {
    if (written.has(name)) written.set(name, size);
  }
  const { sizes: known, faults } = resolveNames(written, ledger.units);
  const sizes = new Map(known);
  for (const field of ledger.dropped) {
    const [top, name] = field.split(".");
    if (top === "dimensions" && name !== undefined) sizes.set(name, null);
  }
  for (const [name, reading] of faults) {
    const size = written.get(name);
    const expected = "a length such as 1.5 cm or 1/2 in";
    takeReading(ledger, `dimensions.${name}`, { written: size, reading, expected });
  }
  return sizes;
}

function resolveSolids(
  ledger: Ledger,
  raw: RawProject,
  stock: readonly Stock[],
): readonly SolidSpec[] {
  const pieces = Object.keys(raw.pieces ?? {});
  return Object.entries(raw.solids ?? {}).map(([id, solid]) => {
    const field = `solids.${id}`;
    const checkFoam = (at: string, name: string | undefined) =>
      name === undefined ? null : checkStock(ledger, at, { name, stock, kinds: ["slab"] });
    checkFoam(`${field}.foam`, solid.foam);
    const blocks = Object.entries(solid.blocks).map(([name, block]) => {
      checkFoam(`${field}.blocks.${name}.foam`, block.foam);
      return resolveBlock(ledger, `${field}.blocks.${name}`, { id: name, raw: block });
    });
    if (blocks.length === 0 && ![...ledger.dropped].some((f) => f.startsWith(`${field}.blocks`))) {
      report(ledger, `${field}.blocks`, "has no block", "Give it at least one block");
    }
    const cover =
      solid.cover === undefined
        ? null
        : resolveCover(ledger, `${field}.cover`, {
            raw: solid.cover,
            solid: id,
            blocks,
            stock,
            pieces,
          });
    return { id, foam: solid.foam ?? null, blocks, cover };
  });
}

function resolveAudience(ledger: Ledger, raw: RawProject["audience"]): Audience | null {
  if (raw === undefined) return null;
  if ("age" in raw) return { kind: "age", years: raw.age };
  if ("adult" in raw) return { kind: "adult" };
  const stature = readLength(ledger, "audience.stature", raw.stature);
  // Nobody is shorter than half a metre or taller than two and a half: a unit was meant.
  if (stature < 500 || stature > 2500) {
    const fix = "Give the height of the sitter with its unit, such as 118 cm";
    report(ledger, "audience.stature", `is ${describe(raw.stature)}, no one's stature`, fix);
  }
  return { kind: "stature", stature };
}

function resolveBuy(
  ledger: Ledger,
  field: string,
  raw: NonNullable<RawProject["buy"]>[number],
): BuyLine {
  const { item, unit = null, have = 0, for: use = null } = raw;
  const isCounted = use !== null && raw.covers !== undefined;
  if (raw.quantity === undefined && !isCounted && !isDropped(ledger, `${field}.quantity`)) {
    report(ledger, `${field}.quantity`, "is missing", "Write how many, or for and covers");
  }
  const quantity = raw.quantity ?? 0;
  const covers =
    raw.covers === undefined
      ? null
      : takeReading(ledger, `${field}.covers`, {
          written: raw.covers,
          reading: parseArea(raw.covers),
          expected: "an area such as 2.5 m2 or 25 ft2",
        });
  const price =
    raw.price === undefined
      ? null
      : takeReading(ledger, `${field}.price`, {
          written: raw.price,
          reading: parsePrice(raw.price, "each"),
          expected: "a price such as 9 each",
        });
  return { item, quantity, unit, have, price, use, covers };
}
