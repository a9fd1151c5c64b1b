import type { Fault, NamedPanel } from "../project/types.ts";
import { halfMark } from "../solids/split-face.ts";
import type { Solid } from "../solids/types.ts";
import { facesNamed } from "./find-face.ts";
import type { Candidate, Grower } from "./grow-candidates.ts";
import type { FaceGraph } from "./unfold-panel.ts";

export interface ListedPanel {
  readonly name: string | null;
  readonly candidate: Candidate;
}

/**
 * Panels as the author lists them; faces left out become panels of their own.
 *
 * @param cost chooses among the ways a listed panel can be folded: the least is taken
 * @param field dotted path of the list in the front matter, for faults
 */
export function readPanelList(
  solid: Pick<Solid, "faces">,
  graph: FaceGraph,
  grower: Grower,
  list: readonly NamedPanel[],
  cost: (candidate: Candidate) => number,
  field: string,
): { panels: ListedPanel[]; faults: Fault[] } {
  const faults: Fault[] = [];
  const takenBy = new Map<string, string>();
  const panels = list.flatMap(({ name, faces: names }, i): ListedPanel[] => {
    const at = `${field}.${i}.faces`;
    const wordOf = new Map<string, string>();
    for (const face of names) {
      const found = facesNamed(solid, face);
      if (found.length === 0) faults.push(hiddenFace(at, face));
      found.forEach(({ id }) => wordOf.set(id, wordOf.get(id) ?? face));
    }
    const own = [...wordOf.keys()];
    const twice = own.filter((face) => takenBy.has(face));
    twice.forEach((face) => faults.push(takenTwice(at, wordOf.get(face)!, takenBy.get(face)!)));
    own.forEach((face) => takenBy.set(face, name));
    if (own.length === 0 || twice.length > 0) return [];
    const halves = partHalves(own);
    if (halves !== null) {
      const parts = halves.map((half) => foldTogether(half, grower, cost));
      const words = ["lower half", "upper half"];
      if (parts.every((part) => part !== null))
        return parts.map((part, half) => ({
          name: `${name}, ${words[half]}`,
          candidate: part!,
        }));
    }
    const candidate = foldTogether(own, grower, cost);
    if (candidate === null) faults.push(cannotLieFlat(at, wordOf, graph));
    return candidate === null ? [] : [{ name, candidate }];
  });
  const rest = solid.faces
    .filter(({ id }) => !takenBy.has(id))
    .map(({ id }): ListedPanel => ({ name: null, candidate: grower.single(id) }));
  return { panels: [...panels, ...rest], faults };
}

/** The faces of a panel whose one strip is cut in two for a closing, half by half; else null. */
function partHalves(faces: readonly string[]): readonly (readonly string[])[] | null {
  const upper = faces.filter((face) => face.endsWith(halfMark));
  const lower = faces.filter((face) => !face.endsWith(halfMark));
  return upper.length > 0 && lower.length > 0 ? [lower, upper] : null;
}

/** The cheapest tree of folds that joins just these faces flat; null where there is none. */
function foldTogether(
  faces: readonly string[],
  grower: Grower,
  cost: (candidate: Candidate) => number,
): Candidate | null {
  const wanted = new Set(faces);
  let layer = new Map<string, Candidate>([["", grower.single(faces[0]!)]]);
  for (let size = 1; size < faces.length; size++) {
    const next = new Map<string, Candidate>();
    for (const candidate of layer.values()) {
      for (const edge of grower.openEdges(candidate)) {
        if (!wanted.has(grower.beyond(candidate, edge))) continue;
        const made = grower.extend(candidate, edge);
        if (made !== null) next.set(made.folded.join(" "), made);
      }
    }
    const ranked = [...next].sort(([a, x], [b, y]) => cost(x) - cost(y) || (a < b ? -1 : 1));
    layer = new Map(ranked.slice(0, widest));
  }
  return [...layer.values()][0] ?? null;
}

/** Foldings of a listed panel kept while it grows. */
const widest = 200;

const hiddenFace = (field: string, face: string): Fault => ({
  field,
  fault: `names ${face}, which is glued to another block and never seen`,
  fix: "Leave it out, or name the face that covers it",
});

const takenTwice = (field: string, face: string, other: string): Fault => ({
  field,
  fault: `names ${face}, which panel "${other}" already has`,
  fix: "Keep it in one of the two panels",
});

/** @param wordOf what the author calls each face */
function cannotLieFlat(
  field: string,
  wordOf: ReadonlyMap<string, string>,
  graph: FaceGraph,
): Fault {
  const faces = [...wordOf.keys()];
  const inWords = (some: readonly string[]) => some.map((face) => wordOf.get(face)!).join(", ");
  const touching = faces.filter((face) =>
    graph.faces
      .get(face)!
      .loops.flat()
      .some(({ edge }) => {
        const { faces: pair, isStraight } = graph.edges.get(edge)!;
        return isStraight && pair[0] !== pair[1] && pair.every((one) => faces.includes(one));
      }),
  );
  const apart = faces.filter((face) => !touching.includes(face));
  return apart.length > 0 && faces.length > 1
    ? {
        field,
        fault: `cannot be one panel: no straight edge to fold joins ${inWords(apart)} to the others`,
        fix: "List them as panels of their own",
      }
    : {
        field,
        fault: `cannot lie flat in one panel: ${inWords(faces)} overlap or do not all join, whichever edges are folded`,
        fix: "Take out one of these faces and list it separately",
      };
}
