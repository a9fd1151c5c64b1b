import { rectangleAt } from "../plane/rectangle.ts";
import { pointBounds } from "../plane/loop-bounds.ts";
import type { Mm, Point, Polygon } from "../plane/types.ts";
import type { Ledger } from "./ledger.ts";
import { report, standIn } from "./ledger.ts";
import { outlineFault } from "./outline-fault.ts";
import { readLength, readPoint } from "./read-length.ts";
import type { RawStock } from "./schema.ts";
import type { ClothFlaw, ClothRemnant } from "./types.ts";

type RawFabric = Extract<RawStock, { readonly kind: "fabric" }>;
type RawRemnant = NonNullable<RawFabric["also"]>[number];

/** Other pieces of a cloth: each has a length of the full width, or an outline of its own. */
export function readRemnants(
  ledger: Ledger,
  field: string,
  { raw, width }: { readonly raw: readonly RawRemnant[]; readonly width: Mm },
): readonly ClothRemnant[] {
  return raw.map((each, index): ClothRemnant => {
    const at = `${field}.${index}`;
    if ((each.length === undefined) === (each.outline === undefined)) {
      const fault = each.length === undefined ? "has no size" : "has both length and outline";
      report(ledger, at, fault, "Give it one of length, outline");
    }
    const flaws = readFlaws(ledger, `${at}.flaws`, each.flaws ?? []);
    const label = each.label ?? null;
    if (each.outline !== undefined) {
      return {
        label,
        outline: readOutline(ledger, `${at}.outline`, each.outline),
        isFullWidth: false,
        flaws,
      };
    }
    const length =
      each.length === undefined ? standIn : readLength(ledger, `${at}.length`, each.length);
    return { label, outline: rectangleAt(0, 0, width, length), isFullWidth: true, flaws };
  });
}

/** Spoiled places on a piece of cloth. */
export function readFlaws(
  ledger: Ledger,
  field: string,
  raw: NonNullable<RawFabric["flaws"]>,
): readonly ClothFlaw[] {
  return raw.map(({ at, size }, index) => ({
    at: readPoint(ledger, `${field}.${index}.at`, at),
    size: [
      readLength(ledger, `${field}.${index}.size.0`, size[0]),
      readLength(ledger, `${field}.${index}.size.1`, size[1]),
    ],
  }));
}

/** Corners moved so that their lowest-left bound is at the origin. */
function readOutline(
  ledger: Ledger,
  field: string,
  written: NonNullable<RawRemnant["outline"]>,
): Polygon {
  const before = ledger.faults.length;
  const corners = written.map((corner, index) => readPoint(ledger, `${field}.${index}`, corner));
  const wrong = ledger.faults.length > before ? null : outlineFault(corners);
  if (wrong !== null) report(ledger, field, wrong.fault, wrong.fix);
  const { min } = pointBounds(corners);
  return corners.map(([x, y]): Point => [x - min[0], y - min[1]]);
}
