import { checkPiece, checkStock } from "./check-name.ts";
import type { Ledger } from "./ledger.ts";
import { report } from "./ledger.ts";
import type { FaceSetting } from "./read-face.ts";
import { readFace } from "./read-face.ts";
import { readLength, readOptional } from "./read-length.ts";
import type { RawCover } from "./schema.ts";
import type {
  Attachment,
  ClosingSpec,
  CoverSpec,
  NamedPanel,
  OpenSeam,
  PanelRule,
  Place,
  PrintSpec,
  Stock,
  Unit,
} from "./types.ts";

/** What a cover may refer to. */
export interface CoverSetting extends FaceSetting {
  readonly stock: readonly Stock[];
  readonly pieces: readonly string[];
}

/**
 * Allowance on a seam where the author gives none.
 *
 * @source common practice, no source: 1/2 in (13 mm) in soft furnishing; 1.5 cm is its metric fellow
 */
export const usualAllowance: Readonly<Record<Unit, number>> = { in: 12.7, cm: 15, mm: 15 };

/**
 * Allowance on both edges of a zip in the middle of a strip where the author gives none: each half is
 * cut half the boxing and this much wider.
 *
 * @source handbook copy, boxed cushion with zip, https://www.somethingfortheroad.com/2011/03/how-to-boxed-cushion-cover-with-a-zipper.html
 * (half the cut boxing width and 3/4 in); 2 cm is its metric fellow
 */
export const zipAllowance: Readonly<Record<Unit, number>> = { in: 19.05, cm: 20, mm: 20 };

/** Resolve a cover and check every face, stock and piece it names. */
export function resolveCover(
  ledger: Ledger,
  field: string,
  { raw, ...setting }: CoverSetting & { readonly raw: RawCover },
): CoverSpec {
  const { solid, blocks, stock } = setting;
  const faces: FaceSetting = { solid, blocks };
  checkStock(ledger, `${field}.fabric`, { name: raw.fabric, stock, kinds: ["fabric"] });
  const up = Object.entries(raw.up ?? {}).map(
    ([name, way]) => [readFace(ledger, `${field}.up.${name}`, { name, ...faces }), way] as const,
  );
  return {
    fabric: raw.fabric,
    seamAllowance: readOptional(ledger, `${field}.seamAllowance`, raw.seamAllowance, {
      missing: usualAllowance[ledger.units],
    }),
    allowances: {
      zip: readOptional(ledger, `${field}.allowances.zip`, raw.allowances?.zip, {
        missing: raw.closing?.across === undefined ? null : zipAllowance[ledger.units],
      }),
      opening: readOptional(ledger, `${field}.allowances.opening`, raw.allowances?.opening, {
        missing: null,
      }),
    },
    print: resolvePrint(ledger, `${field}.print`, { raw: raw.print, ...faces }),
    ease: resolveFit(ledger, `${field}.fit`, raw.fit),
    panels: resolvePanels(ledger, `${field}.panels`, { raw: raw.panels, ...faces }),
    open: resolveOpen(ledger, `${field}.open`, { raw: raw.open, ...faces }),
    hinge:
      raw.hinge === undefined
        ? null
        : readFace(ledger, `${field}.hinge`, { name: raw.hinge, ...faces }),
    closing: resolveClosing(ledger, `${field}.closing`, {
      raw: raw.closing,
      isOpenGiven: raw.open !== undefined && raw.open !== "auto",
      stock,
      ...faces,
    }),
    piping: resolvePiping(ledger, `${field}.piping`, { raw: raw.piping, stock, ...faces }),
    attach: Object.entries(raw.attach ?? {}).map(([id, each]) =>
      resolveAttachment(ledger, `${field}.attach.${id}`, { id, raw: each, ...setting }),
    ),
    up: Object.fromEntries(up),
    anchor: raw.anchor ?? null,
    ...(raw.neaten === undefined ? {} : { neaten: raw.neaten }),
  };
}

function resolvePrint(
  ledger: Ledger,
  field: string,
  { raw, ...setting }: FaceSetting & { readonly raw: RawCover["print"] },
): PrintSpec {
  const read = (name: string, at: string) =>
    readFace(ledger, `${field}.${at}`, { name, ...setting });
  return {
    centre: (raw?.centre ?? []).map((name, i) => read(name, `centre.${i}`)),
    match: (raw?.match ?? []).map(([one, other], i) => {
      return [read(one, `match.${i}.0`), read(other, `match.${i}.1`)] as const;
    }),
  };
}

function resolveFit(ledger: Ledger, field: string, raw: RawCover["fit"]): Place {
  if (raw === undefined || raw === "exact") return [0, 0, 0];
  const [key, written, sign] =
    "smallerBy" in raw
      ? (["smallerBy", raw.smallerBy, -1] as const)
      : (["largerBy", raw.largerBy, 1] as const);
  if (!Array.isArray(written)) {
    const all = sign * readLength(ledger, `${field}.${key}`, written, "notNegative") + 0;
    return [all, all, all];
  }
  const [x = 0, y = 0, z = 0] = written.map(
    (each, i) => sign * readLength(ledger, `${field}.${key}.${i}`, each, "notNegative") + 0,
  );
  return [x, y, z];
}

function resolvePanels(
  ledger: Ledger,
  field: string,
  { raw, ...setting }: FaceSetting & { readonly raw: RawCover["panels"] },
): PanelRule | readonly NamedPanel[] {
  if (!Array.isArray(raw)) return raw ?? "auto";
  const seen = new Map<string, string>();
  const names = new Set<string>();
  return raw.map(({ name, faces }, index) => {
    if (faces.length === 0) {
      report(ledger, `${field}.${index}.faces`, "names no face", "Name at least one face");
    }
    if (names.has(name)) {
      const fix = "Give each panel a name of its own";
      report(ledger, `${field}.${index}.name`, `is "${name}" a second time`, fix);
    }
    names.add(name);
    const read = faces.map((each, place) => {
      const at = `${field}.${index}.faces.${place}`;
      const face = readFace(ledger, at, { name: each, ...setting });
      const before = seen.get(face);
      if (before !== undefined) {
        const fix = "A face can be in one panel only: take one of the two out";
        report(ledger, at, `names ${face}, which is already in the panel "${before}"`, fix);
      }
      seen.set(face, name);
      return face;
    });
    return { name, faces: read };
  });
}

function resolveOpen(
  ledger: Ledger,
  field: string,
  { raw, ...setting }: FaceSetting & { readonly raw: RawCover["open"] },
): readonly OpenSeam[] | null {
  if (raw === undefined || raw === "auto") return null;
  return raw.map((entry, index): OpenSeam => {
    const at = `${field}.${index}`;
    if (typeof entry === "string") {
      return { kind: "face", face: readFace(ledger, at, { name: entry, ...setting }) };
    }
    const [one, other] = entry.between;
    const first = readFace(ledger, `${at}.between.0`, { name: one, ...setting });
    const second = readFace(ledger, `${at}.between.1`, { name: other, ...setting });
    if (first === second) {
      const fix = "Name the two faces that the seam lies between";
      report(ledger, `${at}.between`, `names ${first} twice`, fix);
    }
    const length = readOptional(ledger, `${at}.length`, entry.length, { missing: null });
    return { kind: "between", faces: [first, second], ...(length === null ? {} : { length }) };
  });
}

function resolveClosing(
  ledger: Ledger,
  field: string,
  {
    raw,
    isOpenGiven,
    stock,
    ...faces
  }: FaceSetting & {
    readonly raw: RawCover["closing"];
    readonly isOpenGiven: boolean;
    readonly stock: readonly Stock[];
  },
): ClosingSpec {
  if (raw === undefined) return { kind: "hand-sewn", stock: null };
  const across =
    raw.across === undefined
      ? null
      : readFace(ledger, `${field}.across`, { name: raw.across, ...faces });
  if (across !== null && isOpenGiven) {
    const fix = "Take open out: the opening is the middle of that face";
    report(ledger, `${field}.across`, "is given together with open", fix);
  }
  const where = across === null ? {} : { across };
  if (raw.stock === undefined) return { kind: raw.kind, stock: null, ...where };
  if (raw.kind !== "zip") {
    const fix = "Take stock out, or write kind: zip";
    report(ledger, `${field}.stock`, `is not used by ${raw.kind}`, fix);
  } else {
    checkStock(ledger, `${field}.stock`, { name: raw.stock, stock, kinds: ["zip"] });
  }
  return { kind: raw.kind, stock: raw.stock, ...where };
}

function resolvePiping(
  ledger: Ledger,
  field: string,
  {
    raw,
    stock,
    ...setting
  }: FaceSetting & { readonly raw: RawCover["piping"]; readonly stock: readonly Stock[] },
): CoverSpec["piping"] {
  if (raw === undefined) return null;
  if (raw.stock !== undefined) {
    checkStock(ledger, `${field}.stock`, { name: raw.stock, stock, kinds: ["length"] });
  }
  const along = raw.along.map((name, index) =>
    readFace(ledger, `${field}.along.${index}`, { name, ...setting }),
  );
  return {
    cord: readLength(ledger, `${field}.cord`, raw.cord),
    along,
    cut: raw.cut ?? "bias",
    ...(raw.stock === undefined ? {} : { stock: raw.stock }),
  };
}

function resolveAttachment(
  ledger: Ledger,
  field: string,
  {
    id,
    raw,
    solid,
    blocks,
    pieces,
  }: CoverSetting & { readonly id: string; readonly raw: NonNullable<RawCover["attach"]>[string] },
): Attachment {
  checkPiece(ledger, `${field}.piece`, { name: raw.piece, pieces });
  const on = readFace(ledger, `${field}.on`, { name: raw.on, solid, blocks });
  const read = (index: 0 | 1) => {
    const written = raw.at?.[index] ?? "centre";
    if (written === "centre") return "centre" as const;
    return readLength(ledger, `${field}.at.${index}`, written, "notNegative");
  };
  return { id, piece: raw.piece, on, at: [read(0), read(1)] };
}
