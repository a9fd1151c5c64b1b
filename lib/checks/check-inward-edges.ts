import type { Work } from "../estimate/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Face, SolidEdge } from "../solids/types.ts";
import type { Check } from "./types.ts";

/** Inward corners where the cloth lifts off the foam when somebody slides on it, and nothing holds it down. */
export const checkInwardEdges: Check = (work) =>
  work.covers.flatMap((cover) => {
    const solid = work.solids.find((one) => one.id === cover.solid);
    const spec = work.project.solids.find((one) => one.id === cover.solid)?.cover ?? null;
    if (solid === undefined || (spec !== null && spec.anchor !== null)) return [];
    return solid.edges
      .filter((edge) => edge.bend === "inward" && isSatUpon(edge, solid.faces))
      .map((edge) => findingFor(edge, cover, solid.faces, work));
  });

/** Does a face that can be sat or leant on end at this edge? Two walls in a corner are left alone. */
function isSatUpon(edge: SolidEdge, faces: readonly Face[]): boolean {
  return edge.faces.some((id) => (faces.find((face) => face.id === id)?.normal[2] ?? 0) > 0.5);
}

function findingFor(edge: SolidEdge, cover: Cover, faces: readonly Face[], { format }: Work) {
  const [one, other] = edge.faces.map((id) => faces.find((face) => face.id === id)?.label ?? id);
  const isFolded = cover.panels.some((panel) => panel.folds.some((fold) => fold.edge === edge.id));
  const pad = "lay a loose pad cut from an offcut into the corner";
  const tacks = `tack the cloth to the foam cover by hand along the ${format.length(edge.length)}`;
  const remedies = isFolded
    ? `${pad}, ${tacks}, or cut the panel apart there and catch the seam down`
    : `${pad}, ${tacks}, or catch the seam down from inside`;
  return {
    id: `cloth-lifts/${cover.solid}/${edge.id}`,
    severity: "note" as const,
    about: `solid/${cover.solid}`,
    message:
      `Between ${one} and ${other} the cover turns inward along ${format.length(edge.length)}. ` +
      "Nothing holds the cloth down there, and it lifts when somebody slides on it.",
    remedy: `In order of effort: ${remedies}. Then name it under \`anchor\`.`,
    source: "common practice, no source",
  };
}
