import type { FaceGraph } from "./unfold-panel.ts";

/** A name in plain words: "front", "front and left side", "band of 4 sides". */
export function labelPanel(graph: FaceGraph, faces: readonly string[]): string {
  const labels = faces.map((face) => graph.faces.get(face)!.label);
  if (labels.length <= 2) return labels.join(" and ");
  const areWalls = faces.every((face) => {
    const { normal, isCurved, up } = graph.faces.get(face)!;
    return Math.abs(normal[2]) < 1e-6 && (isCurved ? Math.abs(up[2]) > 0.999 : true);
  });
  if (areWalls) return `band of ${labels.length} sides`;
  if (labels.length === 3) return `${labels[0]}, ${labels[1]} and ${labels[2]}`;
  return `${labels[0]}, ${labels[1]} and ${labels.length - 2} more`;
}
