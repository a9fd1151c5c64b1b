import type { Placement, Radians } from "../plane/types.ts";
import { atHome } from "../plane/place.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { wholeTurn } from "../plane/points.ts";
import { moveUnfolding, type FaceGraph, type Unfolding } from "./unfold-panel.ts";

const sameTurn: Radians = 1e-6;

/** How far each face's up stands turned from +y, counter-clockwise, in (−π, π]. */
export function turnOfFace(graph: FaceGraph, face: string, placement: Placement): Radians {
  const turn = wholeTurn(graph.faces.get(face)!.upAngle + placement.turn - Math.PI / 2);
  return turn > Math.PI + sameTurn ? turn - 2 * Math.PI : turn;
}

/**
 * Turn a panel so that the print stands upright on as much of what is seen as can be, and shift its
 * lowest-left corner to the origin. Hidden faces count only where nothing seen decides.
 */
export function orientUnfolding(graph: FaceGraph, unfolding: Unfolding): Unfolding {
  const votes: { turn: Radians; weight: number }[] = [];
  for (const [id, placement] of unfolding.placements) {
    const face = graph.faces.get(id)!;
    const turn = turnOfFace(graph, id, placement);
    const weight = face.area * (face.isVisible ? 1 : 1e-6);
    const known = votes.find((vote) => Math.abs(wholeTurn(vote.turn - turn + 1) - 1) < sameTurn);
    if (known) known.weight += weight;
    else votes.push({ turn, weight });
  }
  const best = votes.reduce((a, b) => (b.weight > a.weight * (1 + 1e-9) ? b : a));
  const turned = moveUnfolding(unfolding, { ...atHome, turn: snapQuarter(-best.turn) });
  const { min } = loopBounds(
    turned.loops.flatMap((loop) => loop.flatMap(({ segments }) => segments)),
  );
  return moveUnfolding(turned, { ...atHome, shift: [-min[0], -min[1]] });
}

/** A turn within rounding of a quarter turn is one. */
function snapQuarter(turn: Radians): Radians {
  const quarter = Math.round(turn / (Math.PI / 2)) * (Math.PI / 2);
  return Math.abs(turn - quarter) < sameTurn ? quarter : turn;
}
