import type { Face, Point3 } from "../solids/types.ts";
import type { FaceGraph } from "./unfold-panel.ts";

/**
 * Each face's mirror image from left to right. Empty where some face has none: the form is not
 * symmetrical.
 */
export function findTwins(graph: FaceGraph): ReadonlyMap<string, string> {
  const faces = [...graph.faces.values()];
  const corners = new Map(faces.map((face) => [face.id, cornersOf(graph, face)]));
  const xs = [...corners.values()].flat().map(([x]) => x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const twins = new Map<string, string>();
  for (const face of faces) {
    const wanted = summary(
      corners.get(face.id)!.map(([x, y, z]): Point3 => [2 * middle - x, y, z]),
    );
    const twin = faces.find(
      (other) => Math.abs(other.area - face.area) < 1 && summary(corners.get(other.id)!) === wanted,
    );
    if (!twin) return new Map();
    twins.set(face.id, twin.id);
  }
  return twins;
}

const cornersOf = (graph: FaceGraph, face: Face): Point3[] =>
  face.loops.flat().flatMap(({ edge }) => {
    const { path } = graph.edges.get(edge)!;
    return [path[0]!, path.at(-1)!];
  });

/** The box round some corners, to a hundredth of a millimetre. */
const summary = (corners: readonly Point3[]): string =>
  [0, 1, 2]
    .flatMap((axis) => {
      const along = corners.map((corner) => corner[axis]!);
      return [Math.min(...along), Math.max(...along)];
    })
    .map((value) => Math.round(value * 100))
    .join(" ");
