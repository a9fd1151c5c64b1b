import type { Count, Mm } from "../plane/types.ts";
import { touching } from "./no-fit-depth.ts";
import type { StripJob, StripPlace } from "./strip-types.ts";

/** Whether a form at a height lies wholly below or above every wall. */
export function crossesNoWall(job: StripJob, form: Count, y: Mm): boolean {
  const top = y + job.forms[form]!.height;
  return job.walls.every((wall) => top <= wall + touching || y >= wall - touching);
}

/** Height of the highest place. */
export const stripLength = (job: StripJob, places: readonly StripPlace[]): Mm =>
  places.reduce((top, { form, y }) => Math.max(top, y + job.forms[form]!.height), 0);
