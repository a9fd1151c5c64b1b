import type { Finding } from "../checks/types.ts";
import type { Material } from "../estimate/types.ts";
import type { CutPlan, Lay } from "../packing/types.ts";
import type { Fault, Project } from "../project/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import type { Step } from "../steps/types.ts";

/**
 * Everything worked out for one booklet. Tables, figures, steps and plan.json all read this one
 * object, so they cannot disagree.
 */
export interface Plan {
  readonly project: Project;
  readonly solids: readonly Solid[];
  readonly covers: readonly Cover[];
  /** Loose pieces of cloth, as cut. */
  readonly pieces: readonly Piece[];
  readonly lays: readonly Lay[];
  readonly slabs: readonly CutPlan[];
  readonly sheets: readonly CutPlan[];
  readonly boards: readonly CutPlan[];
  readonly materials: readonly Material[];
  readonly findings: readonly Finding[];
  readonly steps: readonly Step[];
  /** Faults that only geometry could find, such as a panel list that overlaps. */
  readonly faults: readonly Fault[];
}
