import type { Count } from "../plane/types.ts";
import type { CoverSpec, Fault } from "../project/types.ts";
import { facesNamed } from "../panels/find-face.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";

/** Edges that the author left open or piped. */
export interface NamedEdges {
  /** In the order named; null where the program is to propose. */
  readonly open: readonly string[] | null;
  readonly piped: ReadonlySet<string>;
  readonly faults: readonly Fault[];
}

/** Work out which edges the author's words `open`, `hinge` and `piping` mean on this solid. */
export function nameEdges(solid: Solid, cover: CoverSpec, field: string): NamedEdges {
  const faults: Fault[] = [];
  const faceIds = (name: string, at: string): readonly string[] => {
    const found = facesNamed(solid, name).map(({ id }) => id);
    if (found.length === 0) {
      faults.push({
        field: at,
        fault: `names ${name}, which is glued to another block and never seen`,
        fix: "Name a face on the outside",
      });
    }
    return found;
  };
  const around = (faces: readonly string[]) =>
    solid.edges.filter(({ faces: [a, b] }) => a !== b && (faces.includes(a) || faces.includes(b)));
  const open =
    cover.open?.flatMap((one, i) => {
      const at = `${field}.open.${i}`;
      if (one.kind === "face")
        return openRound(around(faceIds(one.face, at)), cover, solid).map(({ id }) => id);
      const [a, b] = one.faces.map((name) => faceIds(name, at)) as [
        readonly string[],
        readonly string[],
      ];
      const between = solid.edges.filter(
        ({ faces: [p, q] }) => (a.includes(p) && b.includes(q)) || (a.includes(q) && b.includes(p)),
      );
      if (between.length === 0 && a.length > 0 && b.length > 0) {
        faults.push({
          field: at,
          fault: `names ${one.faces.join(" and ")}, which do not meet in an edge`,
          fix: "Name two faces that share an edge",
        });
      }
      return between.map(({ id }) => id);
    }) ?? null;
  const piped = (cover.piping?.along ?? []).flatMap((name, i) => {
    const faces = faceIds(name, `${field}.piping.along.${i}`);
    return around(faces).map(({ id }) => id);
  });
  return { open: open === null ? null : [...new Set(open)], piped: new Set(piped), faults };
}

/** All edges round a face but its hinge: the one the author names, else the longest. */
function openRound(
  edges: readonly SolidEdge[],
  cover: CoverSpec,
  solid: Solid,
): readonly SolidEdge[] {
  if (edges.length < 2) return edges;
  const hinges = cover.hinge === null ? [] : facesNamed(solid, cover.hinge).map(({ id }) => id);
  const named = edges.find(({ faces }) => faces.some((face) => hinges.includes(face)));
  const longest = edges.reduce((far, edge) => (edge.length > far.length + 1e-6 ? edge : far));
  const hinge = named ?? longest;
  return edges.filter((edge) => edge !== hinge);
}

/** 0 → A, 25 → Z, 26 → AA. */
export function seamLetter(index: Count): string {
  const rest = Math.floor(index / 26) - 1;
  return (rest >= 0 ? seamLetter(rest) : "") + String.fromCharCode(65 + (index % 26));
}
