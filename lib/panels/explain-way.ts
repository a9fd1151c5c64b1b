import { listWords } from "../units/list-words.ts";
import { theFace } from "../solids/the-face.ts";
import { turnOfFace } from "./orient-unfolding.ts";
import type { Way } from "./types.ts";
import { placeNeighbour, sideKey, type FaceGraph } from "./unfold-panel.ts";
import type { ClothRules } from "./weigh-candidate.ts";

/** Reasons in print are few: the longest edges are explained first. */
const mostReasons = 3;

/** In plain words, why the panels of a way are cut apart where they are. */
export function explainWay(
  way: Pick<Way, "panels" | "rule" | "turnedFaces">,
  graph: FaceGraph,
  cloth: ClothRules,
): readonly string[] {
  const panelOf = new Map(
    way.panels.flatMap((panel) =>
      panel.faces.map((face) => [face.face, { panel, ...face }] as const),
    ),
  );
  const label = (face: string) => graph.faces.get(face)!.label;
  const straight = [...graph.edges.values()]
    .filter(
      ({ isStraight, faces: [a, b] }) =>
        isStraight && panelOf.get(a)!.panel !== panelOf.get(b)!.panel,
    )
    .sort((a, b) => b.length - a.length);
  const reasons: string[] = [];
  for (const edge of straight) {
    if (cloth.direction === "any") break;
    const side = graph.sides.get(sideKey(edge.id, true))!;
    const other = edge.faces.find((face) => face !== side.face)!;
    if (!graph.faces.get(other)!.isVisible || !graph.faces.get(side.face)!.isVisible) continue;
    const own = panelOf.get(side.face)!;
    const turn = turnOfFace(graph, other, placeNeighbour(graph, side, own.placement));
    const degrees = Math.round((Math.abs(turn) * 180) / Math.PI);
    const isWrong =
      cloth.direction === "one-way" ? degrees > 5 : Math.min(degrees, 180 - degrees) > 5;
    if (!isWrong || Math.abs(own.turn) > 1e-6) continue;
    const how =
      degrees > 175
        ? "upside down"
        : degrees > 85 && degrees < 95
          ? "sideways"
          : `${degrees}° out of upright`;
    reasons.push(
      `Folding the cloth on from ${theFace(label(side.face))} would turn the print ${how} on ${theFace(label(other))}, so a seam parts them.`,
    );
    if (reasons.length === mostReasons) break;
  }
  if (way.turnedFaces.length > 0 && way.rule !== "named") {
    reasons.push(
      `This way accepts the print turned on ${listWords(way.turnedFaces.map((face) => theFace(label(face))))}.`,
    );
  }
  return reasons;
}
