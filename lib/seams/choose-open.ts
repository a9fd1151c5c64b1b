import type { Mm } from "../plane/types.ts";
import type { Fault } from "../project/types.ts";
import type { SolidEdge } from "../solids/types.ts";
import type { NamedOpen } from "./name-edges.ts";

/** Lengths nearer than this are equal. */
const same: Mm = 1e-6;

/**
 * The edges that the author's words leave open: a pair means its edge, a face all edges round it but one
 * hinge: the one that is named, else the longest. Of edges of one length a fold is the hinge.
 *
 * @param folded edges the panels fold over: they cannot be left open
 * @returns faults for a pair that is folded, and for a face with nothing left to open
 */
export function chooseOpen(
  named: readonly NamedOpen[],
  folded: ReadonlySet<string>,
): { readonly edges: readonly string[]; readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const edges = named.flatMap((one) => {
    const isShut = ({ id }: SolidEdge) => folded.has(id);
    if (one.kind === "between") {
      if (one.edges.some(isShut)) faults.push(isFolded(one));
      return one.edges;
    }
    const hinge = hingeOf(one, folded);
    const open = one.edges.filter((edge) => edge.id !== hinge && !isShut(edge));
    if (open.length === 0 && one.edges.length > 0) faults.push(nothingOpens(one));
    return open;
  });
  return { edges: [...new Set(edges.map(({ id }) => id))], faults };
}

function hingeOf({ edges, hinge }: NamedOpen, folded: ReadonlySet<string>): string | null {
  if (hinge !== null) return hinge;
  if (edges.length < 2) return null;
  const most = Math.max(...edges.map(({ length }) => length));
  const longest = edges.filter(({ length }) => length > most - same);
  return (longest.find(({ id }) => folded.has(id)) ?? longest[0]!).id;
}

const isFolded = ({ field, words }: NamedOpen): Fault => ({
  field,
  fault: `leaves open the edge between ${words}, over which a listed panel folds`,
  fix: "List the two faces in panels of their own, or leave another seam open",
});

const nothingOpens = ({ field, words }: NamedOpen): Fault => ({
  field,
  fault: `leaves ${words} open, but every edge round it is folded or the hinge`,
  fix: "List the face in a panel of its own, or leave another seam open",
});
