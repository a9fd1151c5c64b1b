import { rectangleLoop } from "../plane/rectangle.ts";
import type { Loop, Point, Shape } from "../plane/types.ts";
import { containsPoint } from "../plane/contains-point.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { facingSide, pieceSides } from "./facing-side.ts";
import { checkStock } from "./check-name.ts";
import type { Ledger } from "./ledger.ts";
import { report, standIn } from "./ledger.ts";
import { circleLoop, makeShape, polygonLoop, sizeOf } from "./make-shape.ts";
import { outlineFault } from "./outline-fault.ts";
import { readLength, readOptional, readPlace, readPoint } from "./read-length.ts";
import { usualAllowance } from "./resolve-cover.ts";
import { openHyphens } from "./resolve-stock.ts";
import type { RawPiece } from "./schema.ts";
import type { PieceSpec, Place, Stock } from "./types.ts";

interface Given {
  readonly id: string;
  readonly raw: RawPiece;
  readonly stock: readonly Stock[];
}

/** Resolve a loose piece: one of size, outline or length says its form. */
export function resolvePiece(ledger: Ledger, field: string, { id, raw, stock }: Given): PieceSpec {
  const from = checkStock(ledger, `${field}.stock`, {
    name: raw.stock,
    stock,
    kinds: ["fabric", "sheet", "board", "length"],
  });
  const isCloth = from?.kind === "fabric";
  const outline = resolveShape(ledger, field, { raw, from });
  const allowance = readOptional(ledger, `${field}.seamAllowance`, raw.seamAllowance, {
    missing: isCloth ? usualAllowance[ledger.units] : 0,
    allow: "notNegative",
  });
  if (from !== null && !isCloth && allowance > 0) {
    const fix = "Take the line out";
    report(ledger, `${field}.seamAllowance`, `is not for a ${from.kind}`, fix);
  }
  const hem = resolveHem(ledger, `${field}.hem`, { raw, from, outline });
  const [at = null, ...others] = resolvePlaces(ledger, field, raw);
  return {
    id,
    label: raw.label ?? openHyphens(id),
    stock: raw.stock,
    outline,
    size: sizeOf(loopBounds(outline.outer)),
    cut: raw.cut ?? 1,
    seamAllowance: allowance,
    ...(hem === null ? {} : { hem }),
    up: raw.up ?? (isLong(from) ? "none" : "up"),
    at,
    others,
    along: raw.along ?? null,
    thin: raw.thin ?? null,
  };
}

/** Each side that is named has to have a straight edge. */
function resolveHem(
  ledger: Ledger,
  field: string,
  given: { readonly raw: RawPiece; readonly from: Stock | null; readonly outline: Shape },
): NonNullable<PieceSpec["hem"]> | null {
  const { raw, from, outline } = given;
  if (raw.hem === undefined) return null;
  if (from !== null && from.kind !== "fabric") {
    report(ledger, field, `is not for a ${from.kind}`, "Take the line out");
  }
  const there = new Set(outline.outer.map(facingSide));
  const sides = pieceSides.filter((side) => raw.hem?.[side] !== undefined);
  for (const side of sides) {
    if (there.has(side)) continue;
    const fix = "Take it out, or set seamAllowance, which holds all round";
    report(ledger, `${field}.${side}`, "names a side without a straight edge", fix);
  }
  return Object.fromEntries(
    sides.map((side) => [
      side,
      readLength(ledger, `${field}.${side}`, raw.hem![side]!, "notNegative"),
    ]),
  );
}

/** One place, or one for each of several copies; no more places than copies. */
function resolvePlaces(ledger: Ledger, field: string, { at, cut = 1 }: RawPiece): Place[] {
  if (at === undefined) return [];
  if (!isList(at)) return [readPlace(ledger, `${field}.at`, at)];
  if (at.length > cut) {
    const fix = `Write cut: ${at.length}, or take places out`;
    report(ledger, `${field}.at`, `has ${at.length} places for ${cut} cut`, fix);
  }
  return at.map((place, i) => readPlace(ledger, `${field}.at.${i}`, place));
}

type Written = string | number;

const isList = (
  at: NonNullable<RawPiece["at"]>,
): at is (readonly [Written, Written, Written])[] & typeof at => Array.isArray(at[0]);

function resolveShape(
  ledger: Ledger,
  field: string,
  { raw, from }: { readonly raw: RawPiece; readonly from: Stock | null },
): Shape {
  const wanted = isLong(from) ? (["length"] as const) : (["size", "outline"] as const);
  const given = (["size", "outline", "length"] as const).filter((key) => raw[key] !== undefined);
  const [key] = given;
  if (key === undefined || given.length > 1) {
    const fault = key === undefined ? "has no size" : `has both ${given.join(" and ")}`;
    report(ledger, field, fault, `Give it one of ${wanted.join(", ")}`);
  } else if (from !== null && !wanted.some((each) => each === key)) {
    const fix = `Give it ${wanted.join(" or ")} instead`;
    report(ledger, `${field}.${key}`, `is not for a ${from.kind}`, fix);
  }
  const before = ledger.faults.length;
  const outer = resolveOuter(ledger, field, { raw, from });
  const holes = (raw.holes ?? []).map((hole, index) => {
    const at = `${field}.holes.${index}`;
    if ("outline" in hole) return resolveCorners(ledger, `${at}.outline`, hole.outline);
    const centre = readPoint(ledger, `${at}.at`, hole.at);
    return circleLoop(centre, readLength(ledger, `${at}.circle`, hole.circle));
  });
  if (ledger.faults.length === before) {
    const edge = flattenLoop(outer);
    holes.forEach((hole, index) => {
      if (flattenLoop(hole).every((point) => containsPoint(edge, point))) return;
      const fix = "Move it, or make it smaller";
      report(ledger, `${field}.holes.${index}`, "reaches outside the piece", fix);
    });
  }
  return makeShape(outer, holes);
}

function resolveOuter(
  ledger: Ledger,
  field: string,
  { raw, from }: { readonly raw: RawPiece; readonly from: Stock | null },
): Loop {
  if (raw.outline !== undefined) {
    if (Array.isArray(raw.outline)) return resolveCorners(ledger, `${field}.outline`, raw.outline);
    const circle = readLength(ledger, `${field}.outline.circle`, raw.outline.circle);
    return circleLoop([circle / 2, circle / 2], circle);
  }
  if (raw.size !== undefined) {
    const [width, height] = raw.size;
    return rectangleLoop(
      readLength(ledger, `${field}.size.0`, width),
      readLength(ledger, `${field}.size.1`, height),
    );
  }
  const length = readOptional(ledger, `${field}.length`, raw.length, { missing: standIn });
  return rectangleLoop(length, widthOf(from));
}

const isLong = (from: Stock | null): boolean => from?.kind === "board" || from?.kind === "length";

/** A nominal width for what is only long: it is drawn nowhere. */
const nominal = 10;

const widthOf = (from: Stock | null): number => {
  if (from?.kind === "board") return from.section[0];
  return from?.kind === "length" ? nominal : standIn;
};

function resolveCorners(
  ledger: Ledger,
  field: string,
  written: readonly (readonly (string | number)[])[],
): Loop {
  const before = ledger.faults.length;
  const corners: readonly Point[] = written.map((corner, index) =>
    readPoint(ledger, `${field}.${index}`, corner),
  );
  const wrong = ledger.faults.length > before ? null : outlineFault(corners);
  if (wrong !== null) report(ledger, field, wrong.fault, wrong.fix);
  return polygonLoop(corners);
}
