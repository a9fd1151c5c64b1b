import { listWords } from "../units/list-words.ts";
import { theFace } from "../solids/the-face.ts";
import { isYoungerThan } from "./is-younger-than.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";
import { zipPlace, type ZipPlace } from "./zip-place.ts";

const zip = rules["zip-child"];
/** More faces than that are counted, not named. Our choice. */
const mostNamed = 4;

/** Zips that a child could open to reach the foam. */
export const checkZipForChildren: Check = ({ project, covers, solids }) => {
  if (!isYoungerThan(zip.underYears, project.audience)) return [];
  return covers
    .filter(({ closing }) => closing?.kind === "zip")
    .map((cover) => {
      const solid = solids.find(({ id }) => id === cover.solid);
      const place = solid === undefined ? null : zipPlace(cover, solid);
      return {
        id: `zip-child/${cover.solid}`,
        severity: "warning",
        about: `solid/${cover.solid}`,
        message: `A child who opens the zip of the ${cover.solid} cover can crawl in, or bite off foam and choke on it.${placeWords(place)}`,
        remedy: `${moveWords(place)}ake the puller off the slider and open it with a paper clip, or sew the cover shut by hand.`,
        source: zip.source,
      };
    });
};

function placeWords(place: ZipPlace | null): string {
  if (place === null) return "";
  const faces =
    place.along.length > mostNamed
      ? `${place.along.length} faces`
      : listWords(place.along.map(theFace));
  const where = ` The zip runs along ${faces}, `;
  return place.isInReach
    ? `${where}where a child can reach it.`
    : `${where}out of reach of a child on the seat.`;
}

function moveWords(place: ZipPlace | null): string {
  if (place === null) return "Keep the zip at the back or underside, t";
  return place.isInReach
    ? "Open the seam between back and underside instead where the foam still goes in. T"
    : "T";
}
