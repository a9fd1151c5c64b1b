import type { Fault, NamedPanel } from "../project/types.ts";
import { halfMark } from "../solids/split-face.ts";
import type { Solid } from "../solids/types.ts";
import { facesNamed } from "./find-face.ts";
import type { Candidate, Grower } from "./grow-candidates.ts";
import { twinOf, type FaceGraph } from "./unfold-panel.ts";

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
    const parts = partHalves(own, graph)?.map((part, _, all) => ({
      name: partName(name, part, all),
      candidate: foldTogether(part, grower, cost),
    }));
    if (parts?.every(({ candidate }) => candidate !== null))
      return parts.map((part) => ({ name: part.name, candidate: part.candidate! }));
    const candidate = foldTogether(own, grower, cost);
    if (candidate === null) faults.push(cannotLieFlat(at, wordOf, graph));
    return candidate === null ? [] : [{ name, candidate }];
  });
  const rest = solid.faces
    .filter(({ id }) => !takenBy.has(id))
    .map(({ id }): ListedPanel => ({ name: null, candidate: grower.single(id) }));
  return { panels: [...panels, ...rest], faults };
}

/**
 * The faces of a panel one of whose strips is cut in two for a closing, half by half, each with the
 * faces that hang on it alone; what hangs on both stands by itself. Null where no strip is cut.
 */
function partHalves(
  faces: readonly string[],
  graph: FaceGraph,
): readonly (readonly string[])[] | null {
  const upper = faces.find((face) => face.endsWith(halfMark));
  const lower = upper?.slice(0, -halfMark.length);
  if (upper === undefined || !faces.includes(lower!)) return null;
  const whole = hangTogether(faces, graph);
  const isApart = whole.every((part) => !(part.includes(upper) && part.includes(lower!)));
  if (isApart) return whole;
  const rest = faces.filter((face) => face !== upper && face !== lower);
  return [[lower!], [upper], ...hangTogether(rest, graph)];
}

/** Faces in groups that straight edges join, edges that stay seams left out. */
function hangTogether(faces: readonly string[], graph: FaceGraph): string[][] {
  const groups: string[][] = [];
  for (const face of faces) {
    const next = graph.faces
      .get(face)!
      .loops.flat()
      .filter(({ edge }) => graph.edges.get(edge)!.isStraight && !graph.kept.has(edge))
      .map((side) => twinOf(graph, side).face);
    const touching = groups.filter((group) => group.some((other) => next.includes(other)));
    const rest = groups.filter((group) => !touching.includes(group));
    groups.splice(0, groups.length, ...rest, [...touching.flat(), face]);
  }
  return groups;
}

/** What each part of a listed panel is called: "back, lower half"; what stands by itself is counted. */
function partName(name: string, part: readonly string[], parts: readonly (readonly string[])[]) {
  const upper = parts.flat().find((face) => face.endsWith(halfMark))!;
  if (part.includes(upper)) return `${name}, upper half`;
  const lower = upper.slice(0, -halfMark.length);
  if (part.includes(lower)) return `${name}, lower half`;
  const rest = parts.filter((one) => !one.includes(upper) && !one.includes(lower));
  return rest.length === 1 ? name : `${name} ${rest.indexOf(part) + 1}`;
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
