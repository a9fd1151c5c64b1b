import type { Count } from "../plane/types.ts";
import { stripLength } from "./clear-place.ts";
import { findLowest } from "./fill-bottom-left.ts";
import { touching } from "./no-fit-depth.ts";
import type { NoFitTable } from "./no-fit-table.ts";
import type { Strip, StripJob, StripPlace } from "./strip-types.ts";

/** Rounds of settling after which a lay is taken as it is. */
const mostRounds = 4;

/** Among more pieces than this, gaps are looked for near a piece only. @source our choice */
const mostFarSought: Count = 80;
/** Near is as far below as so many times the tallest piece. @source our choice */
const nearby = 2;

/**
 * Take up the pieces one by one, lowest first, and lay each again at its lowest clear place among
 * all the others. Never makes the strip longer.
 */
export function settleStrip(job: StripJob, table: NoFitTable, strip: Strip): Strip {
  const places = [...strip.places];
  for (let round = 0; round < mostRounds; round++) {
    if (!settleOnce(job, table, places)) break;
  }
  return { places, length: stripLength(job, places) };
}

function settleOnce(job: StripJob, table: NoFitTable, places: StripPlace[]): boolean {
  const order = places
    .map((place, index) => ({ place, index }))
    .sort((a, b) => a.place.y - b.place.y || a.place.x - b.place.x || a.index - b.index);
  const tallest = Math.max(0, ...places.map(({ form }) => job.forms[form]!.height));
  const reach = places.length > mostFarSought ? nearby * tallest : Infinity;
  const floors = new Float64Array(job.forms.length);
  let hasMoved = false;
  for (const { index } of order) {
    const own = places[index]!;
    const others = places.filter((_, other) => other !== index);
    // Places that end higher than its own are not looked at.
    const limit = topOf(job, own) + 3 * touching;
    const found = findLowest(job, table, job.items[index]!, others, {
      limit,
      floors: floors.fill(Math.max(0, own.y - reach)),
    });
    if (found === null) continue;
    const gainedY = topOf(job, own) - topOf(job, found);
    const gainedX = own.x - found.x;
    if (gainedY < -touching || (gainedY <= touching && gainedX <= touching)) continue;
    places[index] = found;
    hasMoved = true;
  }
  return hasMoved;
}

const topOf = (job: StripJob, place: StripPlace): number => place.y + job.forms[place.form]!.height;
