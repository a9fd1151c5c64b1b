import { countOf } from "../estimate/count-of.ts";
import type { Cover } from "../seams/types.ts";
import { anchoredEdges } from "../solids/anchored-edges.ts";
import { theFace } from "../solids/the-face.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";
import type { Check } from "./types.ts";

/** Inward corners where the cloth lifts off the foam when somebody slides on it, and nothing holds it down. */
export const checkInwardEdges: Check = ({ covers, solids, project, format: { length } }) =>
  covers.flatMap((cover) => {
    const solid = solids.find((one) => one.id === cover.solid);
    const spec = project.solids.find((one) => one.id === cover.solid)?.cover ?? null;
    if (solid === undefined || (spec !== null && spec.anchor !== null)) return [];
    const edges = anchoredEdges(solid);
    if (edges.length === 0) return [];
    const places = edges.map((edge) => `${whereOf(edge, solid)} (${length(edge.length)})`);
    const all = length(edges.reduce((sum, edge) => sum + edge.length, 0));
    const seam = edges.some((edge) => isFolded(edge, cover))
      ? "cut the panels apart there and catch the seams down"
      : "catch the seams down from inside";
    return [
      {
        id: `cloth-lifts/${cover.solid}`,
        severity: "note",
        about: `solid/${cover.solid}`,
        message:
          `The cover turns inward at ${countOf(edges.length, "edge")}: ${places.join(", ")}. ` +
          "Nothing holds the cloth down there, and it lifts when somebody slides on it.",
        remedy:
          "In order of effort: lay a loose pad cut from an offcut into the corner, " +
          `tack the cloth to the foam by hand, ${all} in all, or ${seam}. Then name it under \`anchor\`.`,
        source: "common practice, no source",
      },
    ];
  });

function whereOf(edge: SolidEdge, { faces }: Solid): string {
  const [one, other] = edge.faces.map((id) => faces.find((face) => face.id === id)?.label ?? id);
  return `between ${theFace(one ?? "")} and ${theFace(other ?? "")}`;
}

function isFolded(edge: SolidEdge, { panels }: Cover): boolean {
  return panels.some((panel) => panel.folds.some((fold) => fold.edge === edge.id));
}
