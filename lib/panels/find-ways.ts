import type { Fault, NamedPanel, PanelRule } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";
import { growCandidates } from "./grow-candidates.ts";
import { labelPanel } from "./label-panel.ts";
import { makePanel } from "./make-panel.ts";
import { turnedOn } from "./measure-candidate.ts";
import { pairPanels } from "./pair-panels.ts";
import { readPanelList, type ListedPanel } from "./read-panel-list.ts";
import { explainWay } from "./explain-way.ts";
import { costOf, exhaustiveUpTo, searchWays } from "./search-ways.ts";
import type { Way } from "./types.ts";
import { graphSolid, type FaceGraph } from "./unfold-panel.ts";
import type { ClothRules } from "./weigh-candidate.ts";

export interface WayOptions {
  readonly cloth: ClothRules;
  /** Edges that must stay seams: piped, or left open. */
  readonly seamed: ReadonlySet<string>;
  /** Edges in the middle of a strip that is cut in two: no panel is folded over them. */
  readonly parted?: ReadonlySet<string>;
  /** Dotted path of the list in the front matter, for faults. */
  readonly field: string;
}

const rules: readonly PanelRule[] = ["auto", "plain", "fewest", "least-cloth", "upright"];

/**
 * Ways to panel a solid: one by each rule, and the author's own where there is one. The chosen way
 * comes first; ways that come out the same are offered once.
 */
export function findWays(
  solid: Solid,
  wanted: PanelRule | readonly NamedPanel[],
  { cloth, seamed, parted = new Set(), field }: WayOptions,
): { ways: Way[]; faults: Fault[] } {
  const graph = graphSolid(solid, seamed);
  const grower = growCandidates(graph, cloth.allowance);
  const faces = solid.faces.map(({ id }) => id);
  const faults: Fault[] = [];
  const ways: Way[] = [];
  const offer = (rule: Way["rule"], listed: readonly ListedPanel[], within = graph) => {
    const way = describeWay(within, rule, listed, cloth, faces);
    if (!ways.some((other) => isSameWay(other, way))) ways.push(way);
  };
  if (typeof wanted !== "string") {
    // The author may fold over an edge that is left open or piped elsewhere: a list is taken at its word.
    const freeGraph = graphSolid(solid, parted);
    const free = growCandidates(freeGraph, cloth.allowance);
    const cost = costOf(free, "auto", cloth);
    const read = readPanelList(solid, freeGraph, free, wanted, cost, field);
    faults.push(...read.faults);
    if (read.faults.length === 0) offer("named", read.panels, freeGraph);
  }
  const order =
    typeof wanted === "string" ? [wanted, ...rules.filter((rule) => rule !== wanted)] : rules;
  // A large solid takes long to search: there only the rule asked for is worked out, and plain.
  const tried =
    faces.length <= exhaustiveUpTo ? order : [...new Set([order[0]!, "plain" as const])];
  for (const rule of tried) {
    offer(
      rule,
      searchWays(faces, grower, rule, cloth).map((candidate) => ({ name: null, candidate })),
    );
  }
  return {
    ways: ways.filter((way, i) => i === 0 || !ways.some((other) => beats(other, way))),
    faults,
  };
}

function describeWay(
  graph: FaceGraph,
  rule: Way["rule"],
  listed: readonly ListedPanel[],
  cloth: ClothRules,
  order: readonly string[],
): Way {
  const rank = (panel: ListedPanel) =>
    Math.min(...panel.candidate.faces.map((face) => order.indexOf(face)));
  const sorted = rule === "named" ? listed : [...listed].sort((a, b) => rank(a) - rank(b));
  const panels = pairPanels(
    sorted.map(({ name, candidate }, i) =>
      makePanel(
        graph,
        {
          faces: [...candidate.faces].sort((a, b) => order.indexOf(a) - order.indexOf(b)),
          folded: candidate.folded,
        },
        `P${i + 1}`,
        name ?? labelPanel(graph, candidate.faces),
      ),
    ),
  );
  const turnedFaces = sorted.flatMap(({ candidate }) =>
    turnedOn(candidate.measures, cloth.direction),
  );
  const folded = new Set(panels.flatMap(({ folds }) => folds.map(({ edge }) => edge)));
  const seams = [...graph.edges.values()].filter(({ id }) => !folded.has(id));
  const way = {
    id: rule,
    rule,
    panels,
    seamLength: seams.reduce((sum, { length }) => sum + length, 0),
    turnedFaces,
    inwardFolds: panels.flatMap(({ folds }) => folds).filter(({ bend }) => bend === "inward")
      .length,
    inwardSeams: seams.filter(({ bend }) => bend === "inward").length,
  };
  return { ...way, reasons: explainWay(way, graph, cloth) };
}

const isSameWay = (a: Way, b: Way): boolean => signature(a) === signature(b);
const signature = ({ panels }: Way): string =>
  panels
    .map(({ folds, faces }) =>
      [...folds.map(({ edge }) => edge), ...faces.map(({ face }) => face)].sort().join(" "),
    )
    .sort()
    .join("|");

/** Whether one way is at least as good by every column of the comparison, and better by one. */
function beats(a: Way, b: Way): boolean {
  if (a === b) return false;
  const columns = ({ panels, seamLength, turnedFaces, inwardFolds }: Way) => [
    panels.length,
    Math.round(seamLength),
    turnedFaces.length,
    inwardFolds,
    Math.round(panels.reduce((sum, { size: [w, h] }) => sum + w * h, 0) / 100),
  ];
  const [own, other] = [columns(a), columns(b)];
  return own.every((value, i) => value <= other[i]!) && own.some((value, i) => value < other[i]!);
}
