import { makePanel } from "../panels/make-panel.ts";
import type { Panel } from "../panels/types.ts";
import { graphSolid } from "../panels/unfold-panel.ts";
import type { Solid } from "../solids/types.ts";
import type { FoamPanel } from "./types.ts";

/**
 * How large each panel would be on the bare foam: the same faces, folded along the same edges. Null where
 * fitting has changed the faces, so that there is no such panel.
 */
export function measureFoamPanels(panels: readonly Panel[], foam: Solid): FoamPanel[] {
  const graph = graphSolid(foam);
  return panels.map(({ id, label, faces, folds }) => {
    const own = faces.map(({ face }) => face);
    const folded = folds.map(({ edge }) => edge);
    const isThere =
      own.every((face) => graph.faces.has(face)) &&
      folds.every(({ edge, faces: pair }) =>
        pair.every((face) => graph.edges.get(edge)?.faces.includes(face)),
      );
    return {
      panel: id,
      size: isThere ? makePanel(graph, { faces: own, folded }, id, label).size : null,
    };
  });
}
