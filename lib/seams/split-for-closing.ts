import { facesNamed } from "../panels/find-face.ts";
import type { CoverSpec, Fault } from "../project/types.ts";
import { splitFace } from "../solids/split-face.ts";
import type { Solid } from "../solids/types.ts";

export interface SplitForClosing {
  readonly solid: Solid;
  /** The edge down the middle of the strip, null where no closing runs across a face. */
  readonly edge: string | null;
  /** Half edges at its ends: the strips end at a seam there. */
  readonly ends: readonly string[];
  readonly faults: readonly Fault[];
}

/** Part the strip that the author wants the closing in; the solid as it is where there is none. */
export function splitForClosing(
  solid: Solid,
  { closing }: Pick<CoverSpec, "closing">,
  field: string,
): SplitForClosing {
  const { across } = closing;
  if (across === undefined || across === null) return { solid, edge: null, ends: [], faults: [] };
  const faces = facesNamed(solid, across);
  const split = faces.length === 1 ? splitFace(solid, faces[0]!.id) : null;
  if (split !== null) return { ...split, faults: [] };
  const fault = {
    field: `${field}.closing.across`,
    fault: `names ${across}, which is not one plain strip with a neighbour along each of its four sides`,
    fix: "Name a flat side with four edges, such as the back of the boxing, or use open",
  };
  return { solid, edge: null, ends: [], faults: [fault] };
}
