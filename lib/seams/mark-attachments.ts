import { containsPoint } from "../plane/contains-point.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { placePoint } from "../plane/place.ts";
import { add, distance } from "../plane/points.ts";
import type { Mm, Point } from "../plane/types.ts";
import { facesNamed } from "../panels/find-face.ts";
import type { Panel } from "../panels/types.ts";
import { graphSolid, placeNeighbour, twinOf, type FaceGraph } from "../panels/unfold-panel.ts";
import type { Attachment, Fault, PieceSpec } from "../project/types.ts";
import type { Face, FaceSide, Solid } from "../solids/types.ts";
import { hiddenFace } from "./name-edges.ts";
import type { LostChoice, Mark } from "./types.ts";

/** A mark, and the panel it is on. */
export interface PanelMark {
  readonly panel: string;
  readonly mark: Mark;
}

/** The marks of one loose piece, and what is amiss. */
export interface Marked {
  readonly marks: readonly PanelMark[];
  readonly faults: readonly Fault[];
  readonly lost: readonly LostChoice[];
}

/** On a line this wide a point is on the outline. */
const nearly: Mm = 0.01;

/**
 * Where a loose piece is sewn on: its middle, and both ends of its longer way, which may reach over an
 * edge on to the next face. Measured from the lower left corner of the face, seen from outside.
 *
 * @param size of the loose piece; null marks only its middle
 * @returns a fault where the face is hidden or the middle lies beside it
 */
export function markAttachment(
  solid: Solid,
  panels: readonly Panel[],
  attachment: Attachment,
  { field, piece }: { readonly field: string; readonly piece: PieceSpec | null },
): Marked {
  const named = facesNamed(solid, attachment.on);
  const [first] = named;
  if (first === undefined)
    return { marks: [], faults: [hiddenFace(`${field}.on`, attachment.on)], lost: [] };
  // The two halves of a strip with a closing in it are measured as the one face they were.
  const faces = named.filter(({ surface }) => surface === first.surface);
  const middle = placeOn(faces, attachment);
  const face = faces.find((one) => isOn(one, middle));
  if (face === undefined) return { marks: [], faults: [besideFace(field, attachment)], lost: [] };
  const graph = graphSolid(solid);
  const label = attachment.id.replaceAll("-", " ");
  const at = (point: Point, words: string, kind: Mark["kind"]): PanelMark[] => {
    const found = carryOver(graph, face, point);
    return panels.flatMap((panel) => {
      const placed = panel.faces.find((one) => one.face === found?.face);
      if (placed === undefined) return [];
      const mark = { at: placePoint(found!.at, placed.placement), label: words, kind };
      return [{ panel: panel.id, mark }];
    });
  };
  const wanted = endsOf(piece);
  const ends = wanted.flatMap((end) => at(add(middle, end), `end of the ${label}`, "end"));
  const lost = ends.length < wanted.length ? [reachesTooFar(attachment, label)] : [];
  return { marks: [...at(middle, label, "middle"), ...ends], faults: [], lost };
}

function placeOn(faces: readonly Face[], { at }: Attachment): Point {
  const boxes = faces.map(({ shape }) => loopBounds(shape.outer));
  return at.map((part, axis) => {
    const least = Math.min(...boxes.map(({ min }) => min[axis]!));
    const most = Math.max(...boxes.map(({ max }) => max[axis]!));
    return part === "centre" ? (least + most) / 2 : least + part;
  }) as unknown as Point;
}

/** From its middle to both ends of the longer way; a round or square piece has none. */
function endsOf(piece: PieceSpec | null): readonly Point[] {
  const [width, height] = piece?.size ?? [0, 0];
  if (Math.abs(width - height) < nearly) return [];
  return width > height
    ? [
        [-width / 2, 0],
        [width / 2, 0],
      ]
    : [
        [0, -height / 2],
        [0, height / 2],
      ];
}

function isOn({ shape }: Face, point: Point): boolean {
  const isNear = (loop: readonly Point[]) =>
    loop.some((corner, i) => offLine(point, corner, loop[(i + 1) % loop.length]!) < nearly);
  const [outer, ...holes] = [shape.outer, ...shape.holes].map((loop) => flattenLoop(loop)) as [
    Point[],
    ...Point[][],
  ];
  if (isNear(outer)) return true;
  return containsPoint(outer, point) && !holes.some((hole) => containsPoint(hole, point));
}

/** How far a point lies off a stretch of line. */
function offLine(point: Point, from: Point, to: Point): Mm {
  const long = distance(from, to);
  if (long < 1e-9) return distance(point, from);
  const [dx, dy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const along = (point[0] - from[0]) * dx + (point[1] - from[1]) * dy;
  const held = Math.min(long, Math.max(0, along));
  return distance(point, [from[0] + held * dx, from[1] + held * dy]);
}

/** A point past the edge of a face lies on the neighbour that is laid flat across that edge. */
function carryOver(
  graph: FaceGraph,
  face: Face,
  at: Point,
): { readonly face: string; readonly at: Point } | null {
  if (isOn(face, at)) return { face: face.id, at };
  for (const side of face.loops.flat()) {
    const twin = twinOf(graph, side);
    if (!graph.edges.get(side.edge)!.isStraight || twin.face === face.id) continue;
    const inTwin = backInto(graph, twin, at);
    if (isOn(graph.faces.get(twin.face)!, inTwin)) return { face: twin.face, at: inTwin };
  }
  return null;
}

/** A point of our face, in the flat coordinates of the neighbour laid against it. */
const backInto = (graph: FaceGraph, twin: FaceSide, at: Point): Point =>
  placePoint(at, placeNeighbour(graph, twin, { turn: 0, isFlipped: false, shift: [0, 0] }));

const reachesTooFar = ({ id, on }: Attachment, label: string): LostChoice => ({
  field: `attach.${id}`,
  message: `The ${label} reaches further than the next face beyond ${on}, or over a curved edge: not both its ends are marked.`,
  remedy: "Make it shorter, or sew it on nearer to the middle of the face.",
});

const besideFace = (field: string, { on }: Attachment): Fault => ({
  field: `${field}.at`,
  fault: `lies beside ${on}, or where it is cut out`,
  fix: "Give a place on the face, from its lower left corner seen from outside",
});
