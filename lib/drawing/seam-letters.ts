import type { Point } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import { hideLines } from "./hide-lines.ts";
import type { Scene } from "./mesh-scene.ts";
import { edgeLines } from "./open-view.ts";
import { roundPlaces } from "./round-places.ts";
import type { Label } from "./types.ts";

/** The letter of each seam beside its edges on a solid, where they are seen first. */
export function seamLetters(
  cover: Cover,
  seams: readonly string[],
  { solid, scene }: { readonly solid: Solid; readonly scene: Scene },
): Label[] {
  return seams.flatMap((id): Label[] => {
    const own = cover.seams.find((seam) => seam.id === id)?.edges ?? [];
    const edges = solid.edges.filter((edge) => own.includes(edge.id));
    const lines = hideLines(edges.flatMap(edgeLines), scene);
    const length = ({ from, to }: (typeof lines)[number]) =>
      Math.hypot(to[0] - from[0], to[1] - from[1]);
    const sorted = lines.toSorted(
      (a, b) => Number(b.isVisible) - Number(a.isVisible) || length(b) - length(a),
    );
    const candidates = sorted.slice(0, 4).flatMap(({ from, to }) =>
      [0.5, 0.3, 0.7].flatMap((share) => {
        const at: Point = [
          from[0] + (to[0] - from[0]) * share,
          from[1] + (to[1] - from[1]) * share,
        ];
        return roundPlaces(at);
      }),
    );
    return candidates.length === 0 ? [] : [{ lines: [id], style: "letter", candidates }];
  });
}
