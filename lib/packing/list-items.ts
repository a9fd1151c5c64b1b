import type { Mm } from "../plane/types.ts";
import type { CutItem } from "./cut-job.ts";
import type { Part } from "./types.ts";

/**
 * One item for each copy of each part, every size larger by the kerf that its cuts take.
 *
 * @param waysOf sizes in which a part may lie on its stock
 */
export const listItems = (
  parts: readonly Part[],
  kerf: Mm,
  waysOf: (part: Part) => readonly (readonly Mm[])[],
): readonly CutItem[] =>
  parts.flatMap((part) =>
    Array.from({ length: part.copies }, (_, copy): CutItem => ({
      part: part.id,
      label: part.label,
      copy: copy + 1,
      layer: [1, 1],
      outline: part.outline,
      ...(part.holes === undefined ? {} : { holes: part.holes, own: part.size }),
      ways: waysOf(part).map((way) => way.map((each) => each + kerf)),
    })),
  );
