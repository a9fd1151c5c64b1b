import type { Ledger } from "./ledger.ts";
import { report } from "./ledger.ts";
import { outlineFault } from "./outline-fault.ts";
import { readLength, readOptional, readPlace, readPoint, readSizes } from "./read-length.ts";
import type { RawBlock } from "./schema.ts";
import { allCorners, cornerName, outlineSize } from "./rounded-corners.ts";
import type { Axis, BlockSpec, RoundedCorner } from "./types.ts";

/** Resolve one block. The outline of a prism keeps the author's order, for its sides are named by it. */
export function resolveBlock(
  ledger: Ledger,
  field: string,
  { id, raw }: { readonly id: string; readonly raw: RawBlock },
): BlockSpec {
  const at = readPlace(ledger, `${field}.at`, raw.at);
  const base = { id, at, foam: raw.foam ?? null };
  if ("box" in raw)
    return { ...base, kind: "box", size: readSizes(ledger, `${field}.box`, raw.box) };
  if ("prism" in raw) return resolvePrism(ledger, field, { base, raw });
  if ("wedge" in raw) {
    const size = readSizes(ledger, `${field}.wedge.size`, raw.wedge.size);
    return { ...base, kind: "wedge", size, rises: raw.wedge.rises ?? "back" };
  }
  if ("cylinder" in raw) {
    const { diameter, length, along } = raw.cylinder;
    return {
      ...base,
      kind: "cylinder",
      diameter: readLength(ledger, `${field}.cylinder.diameter`, diameter),
      length: readLength(ledger, `${field}.cylinder.length`, length),
      along: along ?? "z",
    };
  }
  if ("rounded" in raw) return resolveRounded(ledger, `${field}.rounded`, { base, raw });
  return resolveFrustum(ledger, `${field}.frustum`, { base, raw });
}

type Base = Pick<BlockSpec, "id" | "at" | "foam">;
type Raw<K extends string> = Extract<RawBlock, { readonly [key in K]: unknown }>;

function resolvePrism(
  ledger: Ledger,
  field: string,
  { base, raw }: { readonly base: Base; readonly raw: Raw<"prism"> },
): BlockSpec {
  const before = ledger.faults.length;
  const outline = raw.prism.map((corner, index) =>
    readPoint(ledger, `${field}.prism.${index}`, corner),
  );
  const wrong = ledger.faults.length > before ? null : outlineFault(outline);
  if (wrong !== null) report(ledger, `${field}.prism`, wrong.fault, wrong.fix);
  const height = readLength(ledger, `${field}.height`, raw.height);
  return { ...base, kind: "prism", outline, height, along: raw.along ?? "z" };
}

function resolveRounded(
  ledger: Ledger,
  field: string,
  { base, raw }: { readonly base: Base; readonly raw: Raw<"rounded"> },
): BlockSpec {
  const size = readSizes(ledger, `${field}.size`, raw.rounded.size);
  const radius = readLength(ledger, `${field}.radius`, raw.rounded.radius);
  const along = raw.rounded.along ?? "z";
  const corners = resolveCorners(ledger, `${field}.corners`, raw.rounded.corners, along);
  // Two rounded corners share a side, and each needs its own radius of it.
  const shared = (side: string) => corners.filter((c) => c.split("-").includes(side)).length;
  const widest = Math.max(shared("front"), shared("back"));
  const deepest = Math.max(shared("left"), shared("right"));
  const [width, depth] = outlineSize(size, along);
  const limit = Math.min(width / Math.max(1, widest), depth / Math.max(1, deepest));
  if (radius > limit + 1e-6) {
    const fix = "Make the radius smaller, or use a cylinder";
    report(ledger, `${field}.radius`, "is larger than the sides have room for", fix);
  }
  return { ...base, kind: "rounded", size, radius, along, corners };
}

function resolveCorners(
  ledger: Ledger,
  field: string,
  written: readonly string[] | undefined,
  along: Axis,
): readonly RoundedCorner[] {
  if (written === undefined) return allCorners;
  const twice = written.find((corner, index) => written.indexOf(corner) !== index);
  if (twice !== undefined) report(ledger, field, `names ${twice} twice`, "Take one of them out");
  const named = new Map(allCorners.map((corner) => [cornerName(corner, along), corner]));
  const wrong = written.find((corner) => !named.has(corner));
  if (wrong !== undefined) {
    const fix = `Use some of ${[...named.keys()].join(", ")}`;
    report(ledger, field, `names ${wrong}, which a block rounded along ${along} has not`, fix);
  }
  return written.flatMap((corner) => named.get(corner) ?? []);
}

function resolveFrustum(
  ledger: Ledger,
  field: string,
  { base, raw }: { readonly base: Base; readonly raw: Raw<"frustum"> },
): BlockSpec {
  const { frustum } = raw;
  const before = ledger.faults.length;
  const rim = readLength(ledger, `${field}.base`, frustum.base);
  const top = readOptional(ledger, `${field}.top`, frustum.top, {
    missing: 0,
    allow: "notNegative",
  });
  if (ledger.faults.length === before && Math.abs(rim - top) < 1e-6) {
    const fix = "Make one of them smaller, or use a cylinder";
    report(ledger, `${field}.top`, "is as large as the base", fix);
  }
  const height = readLength(ledger, `${field}.height`, frustum.height);
  return { ...base, kind: "frustum", base: rim, top, height };
}
