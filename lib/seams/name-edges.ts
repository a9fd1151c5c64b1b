import type { Count, Mm } from "../plane/types.ts";
import type { CoverSpec, Fault } from "../project/types.ts";
import { facesNamed } from "../panels/find-face.ts";
import { anchoredEdges } from "../solids/anchored-edges.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";
import { findLengthFaults } from "./part-open.ts";

/** One entry of `open`, as edges of this solid. */
export interface NamedOpen {
  readonly kind: "face" | "between";
  readonly field: string;
  /** What the author calls it. */
  readonly words: string;
  readonly edges: readonly SolidEdge[];
  /** The edge that stays shut by the author's `hinge`; null where none of these is named. */
  readonly hinge: string | null;
  /** How much of its one edge is left open; null for all. */
  readonly length: Mm | null;
}

/** Edges that the author left open, piped, or wants as seams. */
export interface NamedEdges {
  /** In the order named; null where the program is to propose. */
  readonly open: readonly NamedOpen[] | null;
  readonly piped: ReadonlySet<string>;
  /** Inward edges that are to be seams, so that they can be caught down. */
  readonly anchored: ReadonlySet<string>;
  readonly faults: readonly Fault[];
}

/** Work out which edges the author's words `open`, `hinge`, `piping` and `anchor` mean on this solid. */
export function nameEdges(
  solid: Solid,
  cover: CoverSpec,
  { field, format }: { readonly field: string; readonly format: (length: Mm) => string },
): NamedEdges {
  const faults: Fault[] = [];
  const faceIds = (name: string, at: string): readonly string[] => {
    const found = facesNamed(solid, name).map(({ id }) => id);
    if (found.length === 0) faults.push(hiddenFace(at, name));
    return found;
  };
  const around = (faces: readonly string[]) =>
    solid.edges.filter(({ faces: [a, b] }) => a !== b && faces.includes(a) !== faces.includes(b));
  const hinges = cover.hinge === null ? [] : faceIds(cover.hinge, `${field}.hinge`);
  const open =
    cover.open?.map((one, i): NamedOpen => {
      const at = `${field}.open.${i}`;
      if (one.kind === "face") {
        const faces = faceIds(one.face, at);
        const edges = around(faces);
        const hinge = edges.find((edge) =>
          edge.faces.some((face) => !faces.includes(face) && hinges.includes(face)),
        );
        const own = { field: at, words: one.face, hinge: hinge?.id ?? null };
        return { kind: "face", ...own, edges, length: null };
      }
      const [a, b] = one.faces.map((name) => faceIds(name, at)) as [
        readonly string[],
        readonly string[],
      ];
      const words = one.faces.join(" and ");
      const shared = solid.edges.filter(
        ({ faces: [p, q] }) => (a.includes(p) && b.includes(q)) || (a.includes(q) && b.includes(p)),
      );
      if (shared.length === 0 && a.length > 0 && b.length > 0) faults.push(doNotMeet(at, words));
      const own = { kind: "between", field: at, words, hinge: null } as const;
      if (one.length === undefined) return { ...own, edges: shared, length: null };
      // The two may meet in several places: a length is measured along the longest.
      const edges = shared.toSorted((p, q) => q.length - p.length).slice(0, 1);
      faults.push(...findLengthFaults({ ...own, edges, length: one.length }, solid, format));
      return { ...own, edges, length: one.length };
    }) ?? null;
  if (hinges.length > 0 && !open?.some(({ hinge }) => hinge !== null))
    faults.push(noHinge(`${field}.hinge`, cover.hinge!, open));
  const piped = (cover.piping?.along ?? []).flatMap((name, i) => {
    const faces = faceIds(name, `${field}.piping.along.${i}`);
    return around(faces).map(({ id }) => id);
  });
  const anchored = cover.anchor === "seam" ? anchoredEdges(solid).map(({ id }) => id) : [];
  return { open, piped: new Set(piped), anchored: new Set(anchored), faults };
}

export const hiddenFace = (field: string, name: string): Fault => ({
  field,
  fault: `names ${name}, which is glued to another block and never seen`,
  fix: "Name a face on the outside",
});

const doNotMeet = (field: string, names: string): Fault => ({
  field,
  fault: `names ${names}, which do not meet in an edge`,
  fix: "Name two faces that share an edge",
});

const noHinge = (field: string, name: string, open: readonly NamedOpen[] | null): Fault => {
  const faces = (open ?? []).filter(({ kind }) => kind === "face").map(({ words }) => words);
  return faces.length === 0
    ? {
        field,
        fault: `names ${name}, but open names no whole face that could hang on a hinge`,
        fix: "Name a face under open, or take hinge out",
      }
    : {
        field,
        fault: `names ${name}, which shares no edge with ${faces.join(" or ")}`,
        fix: "Name a neighbour of the face that is left open",
      };
};

/** 0 → A, 25 → Z, 26 → AA. */
export function seamLetter(index: Count): string {
  const rest = Math.floor(index / 26) - 1;
  return (rest >= 0 ? seamLetter(rest) : "") + String.fromCharCode(65 + (index % 26));
}
