import type { Solid, SolidEdge } from "./types.ts";

/** The inward edges that cloth lifts off: those along a face one sits on. */
export function anchoredEdges(solid: Pick<Solid, "faces" | "edges">): readonly SolidEdge[] {
  return solid.edges.filter((edge) => edge.bend === "inward" && meetsASeat(edge, solid));
}

/** Two walls in a corner are left alone. */
const meetsASeat = ({ faces }: SolidEdge, solid: Pick<Solid, "faces">): boolean =>
  faces.some((id) => (solid.faces.find((face) => face.id === id)?.normal[2] ?? 0) > 0.5);
