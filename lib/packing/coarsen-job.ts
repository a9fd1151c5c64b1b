import { polygonArea } from "../plane/polygon-area.ts";
import type { Polygon } from "../plane/types.ts";
import { fillDents } from "./fill-dents.ts";
import { makeForm } from "./place-forms.ts";
import type { StripForm, StripJob } from "./strip-types.ts";

/** Dents up to this share of a piece's mean size are filled. @source our choice, measured on swim */
const dentShare = 0.03;
/** Coarse outlines are worth a search of their own when so few of the convex parts are left. */
const worthwhile = 0.7;

/**
 * The same job with the shallow dents of all outlines filled, so that searching is several times
 * quicker; what keeps clear of coarse outlines keeps clear of the true ones. Null where that would
 * spare little.
 */
export function coarsenJob(job: StripJob): StripJob | null {
  const coarse = new Map<Polygon, Polygon>();
  const forms = job.forms.map(({ outline, turn, isFlipped }): StripForm => {
    const depth = dentShare * Math.sqrt(Math.abs(polygonArea(outline)));
    const filled = coarse.get(outline) ?? fillDents(outline, depth);
    coarse.set(outline, filled);
    return makeForm(filled, turn, isFlipped);
  });
  const count = (of: readonly StripForm[]): number =>
    of.reduce((sum, f) => sum + f.parts.length, 0);
  return count(forms) <= worthwhile * count(job.forms) ? { ...job, forms } : null;
}
