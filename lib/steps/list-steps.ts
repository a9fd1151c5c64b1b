import type { Work } from "../estimate/types.ts";
import { listAttaching } from "./list-attaching.ts";
import { listCare } from "./list-care.ts";
import { listChecking } from "./list-checking.ts";
import { listCutting } from "./list-cutting.ts";
import { listFitting } from "./list-fitting.ts";
import { listFoamCutting } from "./list-foam-cutting.ts";
import { listGlueUp } from "./list-glue-up.ts";
import { listLengths } from "./list-lengths.ts";
import { listLoose } from "./list-loose.ts";
import { listNeatening } from "./list-neatening.ts";
import { listPiping } from "./list-piping.ts";
import { listSewing } from "./list-sewing.ts";
import { listWood } from "./list-wood.ts";
import { mergeNotes } from "./merge-notes.ts";
import { splitGroups } from "./split-groups.ts";
import type { Step } from "./types.ts";

/** The work in the order it is done. */
const parts: readonly (readonly [name: string, list: (work: Work) => readonly Step[]])[] = [
  ["check the material", listChecking],
  ["saw the wood", listWood],
  ["cut the foam", listFoamCutting],
  ["glue up the blocks", listGlueUp],
  ["cut the cloth", listCutting],
  ["neaten the edges", listNeatening],
  ["cut webbing, cord and chain", listLengths],
  ["hem loose pieces", listLoose],
  ["sew on what a seam will trap", listAttaching],
  ["make the piping", listPiping],
  ["sew the cover", listSewing],
  ["fit the cover", listFitting],
  ["care", listCare],
];

/** Every step of the making, the author's own steps and notes in their places. */
export function listSteps(work: Work): Step[] {
  return splitGroups(mergeNotes(listComputedSteps(work), work.project.words));
}

/** The steps as worked out, before the author's words; their ids are the ones a project file may name. */
export function listComputedSteps(work: Work): Step[] {
  return parts.flatMap(([, list]) => list(work));
}
