import type { Loop, Shape } from "../plane/types.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { mergeCollinear } from "../plane/merge-collinear.ts";
import { shapeArea } from "../plane/loop-area.ts";
import { orientUnfolding, turnOfFace } from "./orient-unfolding.ts";
import type { Panel } from "./types.ts";
import { unfoldPanel, type FaceGraph } from "./unfold-panel.ts";

export interface PanelPlan {
  readonly faces: readonly string[];
  readonly folded: readonly string[];
}

/** One finished panel: unfolded, the right way up, with its outline. */
export function makePanel(
  graph: FaceGraph,
  { faces, folded }: PanelPlan,
  id: string,
  label: string,
): Panel {
  const unfolding = orientUnfolding(graph, unfoldPanel(graph, faces, folded));
  const loops = unfolding.loops.map((loop) => loop.map((side) => ({ ...side, panel: id })));
  const [outer, ...holes] = loops.map((loop) => loop.flatMap(({ segments }): Loop => segments));
  const shape: Shape = { outer: mergeCollinear(outer!), holes: holes.map(mergeCollinear) };
  const { max } = loopBounds(shape.outer);
  return {
    id,
    label,
    faces: faces.map((face) => {
      const placement = unfolding.placements.get(face)!;
      return { face, placement, turn: turnOfFace(graph, face, placement) };
    }),
    shape,
    loops,
    folds: unfolding.folds,
    area: shapeArea(shape),
    size: [max[0], max[1]],
    mirrorOf: null,
    sameAs: null,
  };
}
