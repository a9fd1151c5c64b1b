import type { Mm } from "../plane/types.ts";
import type { Fault } from "../project/types.ts";
import { beyondPart, partEdge, type EdgePart } from "../solids/part-edge.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";
import { endsOfEdge, gaugeOpening, isSameCorner, type Load } from "./gauge-opening.ts";
import type { NamedOpen } from "./name-edges.ts";
import type { WayOut } from "./types.ts";

/** The author's open edges, some of them for a part of their length. */
export interface PartedOpen {
  /** Edges left open once the parts are cut. */
  readonly edges: readonly string[];
  /** The same edges in their whole length, as they were before. */
  readonly wholes: readonly string[];
  /** Where they are cut, one after another. */
  readonly parts: readonly EdgePart[];
  /** The one edge with a length of its own; null where there is none, or several. */
  readonly only: { readonly edge: SolidEdge; readonly length: Mm } | null;
}

/** A length within this of the whole seam is the whole seam. */
const same: Mm = 1e-6;
/** Longer openings are tried in steps of this. @source our choice: a length one finds on a ruler */
const step: Mm = 10;

/**
 * Where edges that are open for a length only are cut: a straight edge or an arc beside both ends of its
 * middle, a ring where the strip round it ends and once more.
 *
 * @param wholes all open edges; one that another of the author's words leaves open is not cut
 */
export function partOpen(named: readonly NamedOpen[], wholes: readonly string[]): PartedOpen {
  const elsewhere = new Set(
    named.filter(({ length }) => length === null).flatMap(({ edges }) => edges.map(({ id }) => id)),
  );
  const wanted = new Map<string, { readonly edge: SolidEdge; readonly length: Mm }>();
  for (const { edges, length } of named) {
    const [edge] = edges;
    if (edge === undefined || length === null || length > edge.length - same) continue;
    if (!elsewhere.has(edge.id)) wanted.set(edge.id, { edge, length });
  }
  const cuts = new Map([...wanted].map(([id, { edge, length }]) => [id, cutOut(edge, length)]));
  return {
    edges: wholes.map((id) => cuts.get(id)?.open ?? id),
    wholes,
    parts: [...cuts.values()].flatMap(({ parts }) => parts),
    only: wanted.size === 1 ? [...wanted.values()][0]! : null,
  };
}

/** The cuts that set a length of an edge free, and the name of the stretch between them. */
function cutOut(
  edge: SolidEdge,
  length: Mm,
): { readonly open: string; readonly parts: readonly EdgePart[] } {
  if (isSameCorner(...endsOfEdge(edge)))
    return { open: edge.id, parts: [{ edge: edge.id, share: length / edge.length }] };
  const before = (edge.length - length) / 2;
  const open = beyondPart(edge.id);
  return {
    open,
    parts: [
      { edge: edge.id, share: before / edge.length },
      { edge: open, share: length / (edge.length - before) },
    ],
  };
}

/** The least length of the one parted seam that lets the foam in; null where not even all of it does. */
export function lengthen({ edges, only }: PartedOpen, cover: Solid, load: Load): WayOut | null {
  if (only === null) return null;
  const { edge } = only;
  const others = edges.filter((id) => id !== cutOut(edge, only.length).open);
  const tries = Math.ceil((edge.length - only.length) / step);
  for (let i = 1; i <= tries; i++) {
    const length = Math.floor(only.length / step + i) * step;
    const { open, parts } = length < edge.length ? cutOut(edge, length) : whole(edge);
    const { run, girth, fits } = gaugeOpening(
      [...others, open],
      parts.reduce(partEdge, cover),
      load,
    );
    if (fits) return { kind: "longer", pairs: [edge.faces], run, girth };
  }
  return null;
}

const whole = (edge: SolidEdge): ReturnType<typeof cutOut> => ({ open: edge.id, parts: [] });

/** What is wrong with the length of an opening: more than the seam has, or no place to measure it. */
export function findLengthFaults(
  { field, words, edges: [edge], length }: NamedOpen,
  { faces }: Solid,
  format: (length: Mm) => string,
): readonly Fault[] {
  if (edge === undefined || length === null) return [];
  if (length > edge.length + same)
    return [
      {
        field: `${field}.length`,
        fault: `is ${format(length)}, longer than the seam between ${words}, ${format(edge.length)}`,
        fix: `Write ${format(edge.length)} or less, or take length out to leave all of it open`,
      },
    ];
  const sides = faces.flatMap(({ loops }) => loops.flat()).filter((side) => side.edge === edge.id);
  const isRound = sides.some(({ segments }) => segments.every(({ kind }) => kind === "arc"));
  if (edge.isStraight || isRound || length > edge.length - same) return [];
  return [
    {
      field: `${field}.length`,
      fault: `is given for the seam between ${words}, which is neither straight nor part of a circle`,
      fix: "Take length out to leave all of it open, or name a straight or round seam",
    },
  ];
}
